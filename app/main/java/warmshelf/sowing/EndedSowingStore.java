package warmshelf.sowing;

import static warmshelf.db.generated.Tables.SOWING_RESULT;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.SowingResultRecord;

/** Reads what came of the sowings that have ended, from what is kept of each, so that their entries need not be read. */
public final class EndedSowingStore {
    private final Database database;
    private final SowingStore sowings;

    EndedSowingStore(Database database, SowingStore sowings) {
        this.database = database;
        this.sowings = sowings;
    }

    /** Those of which it is known when they were sown, of all seasons, the latest season first and in it the newest. */
    public List<EndedSowing> all() {
        Map<UUID, SowingResultRecord> results = database.sql()
                .selectFrom(SOWING_RESULT)
                .where(SOWING_RESULT.SOWN_ON.isNotNull())
                .fetchMap(SOWING_RESULT.SOWING_ID);
        List<Sowing> ended = sowings.ended().stream()
                .filter(each -> results.containsKey(each.id()))
                .toList();
        Map<UUID, Double> warmth = SowingResultStore.meanCelsius(
                database.sql(),
                ended.stream()
                        .map(Sowing::id)
                        .filter(id -> Objects.requireNonNull(results.get(id)).getWarmthOpen())
                        .toList());
        List<EndedSowing> found = new ArrayList<>();
        for (Sowing each : ended) {
            SowingResultRecord result = Objects.requireNonNull(results.get(each.id()));
            found.add(ended(each, result, result.getWarmthOpen() ? warmth.get(each.id()) : result.getMeanCelsius()));
        }
        return found;
    }

    private static EndedSowing ended(Sowing sowing, SowingResultRecord result, @Nullable Double meanC) {
        return new EndedSowing(
                sowing,
                result.getSownOn(),
                result.getWasUp() == null ? 0 : result.getWasUp(),
                result.getLived() == null ? 0 : result.getLived(),
                result.getPlantedOutOn(),
                meanC);
    }
}
