package warmshelf.sowing;

import static warmshelf.db.generated.Tables.SOWING_RESULT;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.LearnedEmergence;
import warmshelf.crop.Method;
import warmshelf.crop.SeenEmergence;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.SowingResultRecord;

/**
 * Reads of what the group's sowings taught when their seed came up, and keeps what follows for ten minutes: a shift that many
 * sowings bear out does not change from one tick to the next. Only sowings that lay on a mat are read, because of no others is the
 * temperature known.
 */
public final class EmergenceStore implements SowingPlanner.Learned {
    private static final long KEPT_NANOS = Duration.ofMinutes(10).toNanos();

    private final Database database;
    private final CropCatalogue crops;
    private final AtomicBoolean reading = new AtomicBoolean();
    private volatile @Nullable Kept kept;

    public EmergenceStore(Database database, CropCatalogue crops) {
        this.database = database;
        this.crops = crops;
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
        if (last == null) {
            return readFirst().learned();
        }
        if (isFresh(last) || !reading.compareAndSet(false, true)) {
            return last.learned();
        }
        try {
            return readNow().learned();
        } finally {
            reading.set(false);
        }
    }

    private boolean isFresh(Kept last) {
        boolean unchanged = last.writes() == database.writes() && !database.isShared();
        return unchanged || System.nanoTime() - last.sinceNanos() < KEPT_NANOS;
    }

    /** Before anything is kept, whoever comes while it is being read waits for it; later one reads it anew, and nobody waits. */
    private synchronized Kept readFirst() {
        Kept last = kept;
        return last != null ? last : readNow();
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
        List<SowingResultRecord> results = sql.selectFrom(SOWING_RESULT)
                .where(SOWING_RESULT.HALF_BY_DAYS.isNotNull())
                .and(SOWING_RESULT.MEAN_CELSIUS.isNotNull().or(SOWING_RESULT.WARMTH_OPEN.isTrue()))
                .orderBy(SOWING_RESULT.CROP_ID, SOWING_RESULT.SOWING_ID)
                .fetch();
        Map<UUID, Double> warmth = SowingResultStore.meanCelsius(
                sql,
                results.stream()
                        .filter(SowingResultRecord::getWarmthOpen)
                        .map(SowingResultRecord::getSowingId)
                        .toList());
        Map<String, List<SeenEmergence>> seen = new HashMap<>();
        for (SowingResultRecord result : results) {
            Double celsius = result.getWarmthOpen() ? warmth.get(result.getSowingId()) : result.getMeanCelsius();
            if (celsius != null) {
                seen.computeIfAbsent(result.getCropId(), crop -> new ArrayList<>())
                        .add(new SeenEmergence(
                                result.getSowingId(),
                                result.getLotId(),
                                Method.named(result.getMethod()),
                                celsius,
                                result.getHalfAfterDays(),
                                result.getHalfByDays()));
            }
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
