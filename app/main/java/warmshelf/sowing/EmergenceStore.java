package warmshelf.sowing;

import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.LearnedEmergence;
import warmshelf.crop.Method;
import warmshelf.crop.SeenEmergence;
import warmshelf.db.Database;

/**
 * Reads from the group's entries when its seed came up, and keeps what follows for ten minutes: a shift that many sowings
 * bear out does not change from one tick to the next, and reading all entries after each would slow the round. Only sowings
 * that lay on a mat are read, because of no others is the temperature known.
 */
public final class EmergenceStore implements SowingPlanner.Learned {
    private static final long KEPT_NANOS = Duration.ofMinutes(10).toNanos();
    private static final Field<BigDecimal> MEAN_C = DSL.avg(QUARTER_DAY.CELSIUS).as("mean_c");

    private final Database database;
    private final CropCatalogue crops;
    private final EntryStore entries;
    private volatile @Nullable Kept kept;

    public EmergenceStore(Database database, CropCatalogue crops, EntryStore entries) {
        this.database = database;
        this.crops = crops;
        this.entries = entries;
    }

    /** What was learned of a crop; up to ten minutes old. */
    @Override
    public LearnedEmergence of(Crop crop) {
        return learned().getOrDefault(crop.id(), LearnedEmergence.NOTHING);
    }

    /** Every sowing of which it is known when half had come, by the id of its crop; read now, and learned from at once. */
    public Map<String, List<SeenEmergence>> seen() {
        return readNow().seen();
    }

    private Map<String, LearnedEmergence> learned() {
        Kept last = kept;
        return last != null && isFresh(last) ? last.learned() : readOnce().learned();
    }

    private boolean isFresh(Kept last) {
        boolean unchanged = last.writes() == database.writes() && !database.isShared();
        return unchanged || System.nanoTime() - last.sinceNanos() < KEPT_NANOS;
    }

    /** Whoever comes while it is being read waits for it, rather than reading it once more. */
    private synchronized Kept readOnce() {
        Kept last = kept;
        return last != null && isFresh(last) ? last : readNow();
    }

    private Kept readNow() {
        long writes = database.writes();
        Map<String, List<SeenEmergence>> seen = read();
        Map<String, LearnedEmergence> learned = new HashMap<>();
        seen.forEach((id, sowings) -> crops.find(id)
                .ifPresent(crop -> learned.put(id, LearnedEmergence.of(crops.responseOf(crop), sowings))));
        Kept read = new Kept(writes, System.nanoTime(), seen, learned);
        kept = read;
        return read;
    }

    private Map<String, List<SeenEmergence>> read() {
        DSLContext sql = database.sql();
        List<? extends Record> sowings = sql.select(
                        SOWING.ID, SOWING.CROP_ID, SOWING.LOT_ID, SOWING.METHOD, SOWING.SEEDS, MEAN_C)
                .from(SOWING)
                .join(STAY)
                .on(STAY.SOWING_ID.eq(SOWING.ID))
                .join(QUARTER_DAY)
                .on(QUARTER_DAY.STAY_ID.eq(STAY.ID))
                .where(QUARTER_DAY.CELSIUS.isNotNull())
                .groupBy(SOWING.ID, SOWING.CROP_ID, SOWING.LOT_ID, SOWING.METHOD, SOWING.SEEDS)
                .orderBy(SOWING.CROP_ID, SOWING.ID)
                .fetch();
        List<UUID> ids = sowings.stream().map(sowing -> sowing.get(SOWING.ID)).toList();
        Map<UUID, List<Entry>> entriesOf = ids.isEmpty() ? Map.of() : entries.ofSowings(sql, ids);
        Map<String, List<SeenEmergence>> seen = new HashMap<>();
        for (Record sowing : sowings) {
            Method method = Method.named(sowing.get(SOWING.METHOD));
            HalfCame.of(method, sowing.get(SOWING.SEEDS), entriesOf.getOrDefault(sowing.get(SOWING.ID), List.of()))
                    .map(half -> new SeenEmergence(
                            sowing.get(SOWING.ID),
                            sowing.get(SOWING.LOT_ID),
                            method,
                            sowing.get(MEAN_C).doubleValue(),
                            half.afterDays(),
                            half.byDays()))
                    .ifPresent(half -> seen.computeIfAbsent(
                                    sowing.get(SOWING.CROP_ID), crop -> new java.util.ArrayList<>())
                            .add(half));
        }
        return seen.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, each -> List.copyOf(each.getValue())));
    }

    private record Kept(
            long writes,
            long sinceNanos,
            Map<String, List<SeenEmergence>> seen,
            Map<String, LearnedEmergence> learned) {}
}
