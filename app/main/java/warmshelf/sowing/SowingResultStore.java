package warmshelf.sowing;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SOWING_RESULT;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record6;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.SowingResultRecord;

/**
 * Keeps what each sowing taught: written in the transaction of the entry that changes it. How warm it lay is kept once no day on a
 * mat lies ahead of it; until then it is asked of the mats.
 */
public final class SowingResultStore {
    private static final int AT_ONCE = 500;

    private final DSLContext sql;
    private final EntryStore entries;
    private final Audit audit;

    public SowingResultStore(Database database, EntryStore entries, Audit audit) {
        this.sql = database.sql();
        this.entries = entries;
        this.audit = audit;
    }

    /**
     * What a look through all of them found.
     *
     * @param kept as they had to be
     * @param missing that were not kept
     * @param wrong that said something else, or should not have been there
     */
    public record Found(int kept, int missing, int wrong) {
        private Found and(Found more) {
            return new Found(kept + more.kept, missing + more.missing, wrong + more.wrong);
        }
    }

    /**
     * Keeps what a sowing teaches with an entry more, where that is something else than before it. To be called when what the entry
     * does to the sowing's space is done.
     *
     * @param day on which it was seen
     */
    public static void keep(DSLContext tx, Sowing sowing, List<Entry> before, List<Entry> after, LocalDate day) {
        Optional<SowingResult> now = SowingResult.of(sowing.method(), sowing.seeds(), after);
        if (!now.equals(SowingResult.of(sowing.method(), sowing.seeds(), before))) {
            List<SowingResultRecord> rows =
                    rows(tx, SOWING.ID.eq(sowing.id()), now.isEmpty() ? Map.of() : Map.of(sowing.id(), after), day);
            replace(tx, List.of(sowing.id()), rows);
        }
    }

    /** Works out what is not kept yet: where an earlier program wrote the entries. */
    public void fill() {
        boolean filled = !sql.fetchExists(DSL.selectOne()
                .from(SOWING)
                .leftJoin(SOWING_RESULT)
                .on(SOWING_RESULT.SOWING_ID.eq(SOWING.ID))
                .where(SOWING.STAGE.in(SowingStage.PAST_EMERGENCE), SOWING_RESULT.SOWING_ID.isNull()));
        if (!filled) {
            rebuild();
        }
    }

    /** Works all of it out anew, keeps that, and tells what had been kept. */
    public Found rebuild() {
        LocalDate day = audit.now().toLocalDate();
        Found found = new Found(0, 0, 0);
        List<UUID> some = after(null);
        while (!some.isEmpty()) {
            List<UUID> ids = some;
            found = found.and(sql.transactionResult(inside -> rebuild(inside.dsl(), ids, day)));
            some = after(some.get(some.size() - 1));
        }
        return found;
    }

    private List<UUID> after(@Nullable UUID last) {
        return sql.select(SOWING.ID)
                .from(SOWING)
                .where(last == null ? DSL.noCondition() : SOWING.ID.gt(last))
                .orderBy(SOWING.ID)
                .limit(AT_ONCE)
                .fetch(SOWING.ID);
    }

    private Found rebuild(DSLContext tx, List<UUID> ids, LocalDate day) {
        Map<UUID, SowingResultRecord> kept = tx.selectFrom(SOWING_RESULT)
                .where(SOWING_RESULT.SOWING_ID.in(ids))
                .fetchMap(SOWING_RESULT.SOWING_ID);
        List<SowingResultRecord> rows = rows(tx, SOWING.ID.in(ids), entries.ofSowings(tx, ids), day);
        List<SowingResultRecord> changed = new ArrayList<>();
        int missing = 0;
        int wrong = 0;
        for (SowingResultRecord row : rows) {
            SowingResultRecord last = kept.remove(row.getSowingId());
            missing += last == null ? 1 : 0;
            wrong += last != null && !says(last, row) ? 1 : 0;
            if (!row.equals(last)) {
                changed.add(row);
            }
        }
        List<UUID> gone = new ArrayList<>(kept.keySet());
        changed.forEach(row -> gone.add(row.getSowingId()));
        replace(tx, gone, changed);
        return new Found(rows.size() - missing - wrong, missing, wrong + kept.size());
    }

    /** Whether a row that was kept says what it would say today; how warm it lay is asked of the mats where it was left open. */
    private static boolean says(SowingResultRecord kept, SowingResultRecord now) {
        if (!kept.getWarmthOpen()) {
            return kept.equals(now);
        }
        SowingResultRecord same = now.copy();
        same.setSowingId(now.getSowingId());
        same.setWarmthOpen(true);
        same.setMeanCelsius(null);
        return kept.equals(same);
    }

    private static void replace(DSLContext tx, Collection<UUID> sowings, List<SowingResultRecord> rows) {
        if (!sowings.isEmpty()) {
            tx.deleteFrom(SOWING_RESULT)
                    .where(SOWING_RESULT.SOWING_ID.in(sowings))
                    .execute();
        }
        if (!rows.isEmpty()) {
            tx.batchInsert(rows).execute();
        }
    }

    private static List<SowingResultRecord> rows(
            DSLContext tx, Condition which, Map<UUID, List<Entry>> seen, LocalDate day) {
        List<Record6<UUID, String, UUID, Integer, String, Integer>> sowings = tx.select(
                        SOWING.ID, SOWING.CROP_ID, SOWING.LOT_ID, SOWING.SEASON, SOWING.METHOD, SOWING.SEEDS)
                .from(SOWING)
                .where(which)
                .orderBy(SOWING.ID)
                .fetch();
        List<SowingResultRecord> rows = new ArrayList<>();
        for (var sowing : sowings) {
            Method method = Method.named(sowing.value5());
            SowingResult.of(method, sowing.value6(), seen.getOrDefault(sowing.value1(), List.of()))
                    .ifPresent(result -> rows.add(row(sowing, result)));
        }
        warm(tx, rows, day);
        return rows;
    }

    private static SowingResultRecord row(
            Record6<UUID, String, UUID, Integer, String, Integer> sowing, SowingResult result) {
        HalfCame half = result.half();
        SowingResultRecord row = SOWING_RESULT.newRecord();
        row.setSowingId(sowing.value1());
        row.setCropId(sowing.value2());
        row.setLotId(sowing.value3());
        row.setSeason(sowing.value4());
        row.setMethod(sowing.value5());
        row.setSeeds(sowing.value6());
        row.setSownOn(result.sownOn());
        row.setCameUp(result.cameUp());
        row.setWasUp(result.up());
        row.setLived(result.lived());
        row.setHalfAfterDays(half == null ? null : half.afterDays());
        row.setHalfByDays(half == null ? null : half.byDays());
        row.setPlantedOutOn(result.plantedOutOn());
        row.setWarmthOpen(!result.over());
        return row;
    }

    private static void warm(DSLContext tx, List<SowingResultRecord> rows, LocalDate day) {
        List<UUID> over = rows.stream()
                .filter(row -> !row.getWarmthOpen())
                .map(SowingResultRecord::getSowingId)
                .toList();
        Set<UUID> still = tx.selectDistinct(STAY.SOWING_ID)
                .from(Database.listed(STAY, STAY.SOWING_ID, over).join(PLACE).on(PLACE.ID.eq(STAY.PLACE_ID)))
                .where(STAY.TO_DAY.gt(day), PLACE.MAT_ID.isNotNull())
                .fetchSet(STAY.SOWING_ID);
        Map<UUID, Double> celsius = meanCelsius(tx, over);
        for (SowingResultRecord row : rows) {
            boolean open = row.getWarmthOpen() || still.contains(row.getSowingId());
            row.setWarmthOpen(open);
            row.setMeanCelsius(open ? null : celsius.get(row.getSowingId()));
        }
    }

    /** The mean set-point of the mats on which each of some sowings lies and lay; those that lay on none are left out. */
    static Map<UUID, Double> meanCelsius(DSLContext sql, Collection<UUID> sowings) {
        return sql.select(STAY.SOWING_ID, DSL.avg(QUARTER_DAY.CELSIUS))
                .from(Database.listed(STAY, STAY.SOWING_ID, sowings)
                        .join(QUARTER_DAY)
                        .on(QUARTER_DAY.STAY_ID.eq(STAY.ID)))
                .where(QUARTER_DAY.CELSIUS.isNotNull())
                .groupBy(STAY.SOWING_ID)
                .fetchMap(row -> row.value1(), row -> row.value2().doubleValue());
    }
}
