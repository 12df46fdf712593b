package warmshelf.plan;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SEASON_PLAN;
import static warmshelf.db.generated.Tables.SEASON_PLAN_BEFORE;
import static warmshelf.db.generated.Tables.SEASON_PLAN_WARMTH;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.STAY_MOVE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.MatDayStore;
import warmshelf.db.Audit;
import warmshelf.db.generated.tables.records.MatDayRecord;
import warmshelf.plan.engine.SetPointSpan;

/** Sets mats for a publication, keeps what stood there before, and turns the mats back when it is undone. */
final class PlanWarmthStore {
    private final MatDayStore matDays;
    private final Audit audit;

    PlanWarmthStore(MatDayStore matDays, Audit audit) {
        this.matDays = matDays;
        this.audit = audit;
    }

    /**
     * Sets a mat as a plan says, and keeps each day that this changes.
     *
     * @throws warmshelf.decision.Declined when the thermostat cannot hold it or something there cannot bear it
     */
    void set(DSLContext tx, UUID plan, UUID mat, SetPointSpan span, UUID by) {
        MatDayStore.lock(tx, mat);
        Map<LocalDate, MatDayRecord> before = tx.selectFrom(MAT_DAY)
                .where(
                        MAT_DAY.MAT_ID.eq(mat),
                        MAT_DAY.ON_DAY.ge(span.days().from()),
                        MAT_DAY.ON_DAY.lt(span.days().to()))
                .fetchMap(MAT_DAY.ON_DAY);
        LocalDate since = null;
        // Days that stand at this already stay as they are, chosen by hand or not.
        for (LocalDate day = span.days().from(); !day.isAfter(span.days().to()); day = day.plusDays(1)) {
            MatDayRecord was = before.get(day);
            boolean changes = day.isBefore(span.days().to()) && (was == null || was.getCelsius() != span.celsius());
            if (changes) {
                keep(tx, plan, mat, day, was, span.celsius());
                since = since == null ? day : since;
            } else if (since != null) {
                matDays.setPoint(tx, mat, since, day, span.celsius(), by);
                since = null;
            }
        }
    }

    private static void keep(
            DSLContext tx, UUID plan, UUID mat, LocalDate day, @Nullable MatDayRecord before, double celsius) {
        tx.insertInto(SEASON_PLAN_WARMTH)
                .set(SEASON_PLAN_WARMTH.PLAN_ID, plan)
                .set(SEASON_PLAN_WARMTH.MAT_ID, mat)
                .set(SEASON_PLAN_WARMTH.ON_DAY, day)
                .set(SEASON_PLAN_WARMTH.CELSIUS_BEFORE, before == null ? null : before.getCelsius())
                .set(SEASON_PLAN_WARMTH.BY_HAND_BEFORE, before != null && before.getByHand())
                .set(SEASON_PLAN_WARMTH.CELSIUS_SET, celsius)
                .execute();
    }

    /**
     * Turns mats back to what they were set to before a publication, from a day on. A day keeps its set-point where somebody has
     * set the mat otherwise since, and where something lies there that came since or that could not bear the former one. All
     * mats of the publication are held until the transaction ends.
     *
     * @return the names of mats that keep a set-point on some day
     */
    List<String> turnBack(DSLContext tx, UUID plan, LocalDate from, UUID by) {
        matsOf(tx, plan).forEach(mat -> MatDayStore.lock(tx, mat));
        Map<UUID, Set<LocalDate>> needed = needed(tx, plan, from);
        Map<UUID, Integer> turned = new LinkedHashMap<>();
        List<String> kept = new ArrayList<>();
        for (Record day : days(tx, plan, from)) {
            UUID mat = day.get(SEASON_PLAN_WARMTH.MAT_ID);
            boolean unchanged = day.get(SEASON_PLAN_WARMTH.CELSIUS_SET).equals(day.get(MAT_DAY.CELSIUS))
                    && !day.get(MAT_DAY.BY_HAND);
            if (unchanged && !needed.getOrDefault(mat, Set.of()).contains(day.get(SEASON_PLAN_WARMTH.ON_DAY))) {
                turnBack(tx, day);
                turned.merge(mat, 1, Integer::sum);
            } else if (!kept.contains(day.get(MAT.NAME))) {
                kept.add(day.get(MAT.NAME));
            }
        }
        turned.forEach((mat, days) ->
                audit.write(tx, by, "turn mat back", "mat", mat, "%d days of an undone plan".formatted(days)));
        return kept;
    }

    private static Set<UUID> matsOf(DSLContext tx, UUID plan) {
        Set<UUID> mats = new TreeSet<>(tx.selectDistinct(SEASON_PLAN_WARMTH.MAT_ID)
                .from(SEASON_PLAN_WARMTH)
                .where(SEASON_PLAN_WARMTH.PLAN_ID.eq(plan))
                .fetch(SEASON_PLAN_WARMTH.MAT_ID));
        mats.addAll(tx.selectDistinct(PLACE.MAT_ID)
                .from(SEASON_PLAN_BEFORE)
                .join(PLACE)
                .on(PLACE.ID.eq(SEASON_PLAN_BEFORE.PLACE_ID))
                .where(SEASON_PLAN_BEFORE.PLAN_ID.eq(plan), PLACE.MAT_ID.isNotNull())
                .fetch(PLACE.MAT_ID));
        return mats;
    }

    private static List<? extends Record> days(DSLContext tx, UUID plan, LocalDate from) {
        return tx.select(SEASON_PLAN_WARMTH.asterisk(), MAT_DAY.CELSIUS, MAT_DAY.BY_HAND, MAT.NAME)
                .from(SEASON_PLAN_WARMTH)
                .join(MAT)
                .on(MAT.ID.eq(SEASON_PLAN_WARMTH.MAT_ID))
                .leftJoin(MAT_DAY)
                .on(MAT_DAY.MAT_ID.eq(SEASON_PLAN_WARMTH.MAT_ID), MAT_DAY.ON_DAY.eq(SEASON_PLAN_WARMTH.ON_DAY))
                .where(SEASON_PLAN_WARMTH.PLAN_ID.eq(plan), SEASON_PLAN_WARMTH.ON_DAY.ge(from))
                .orderBy(MAT.NAME, SEASON_PLAN_WARMTH.ON_DAY)
                .fetch();
    }

    /** The days on which something lies on a mat that needs what the publication set it to. */
    private static Map<UUID, Set<LocalDate>> needed(DSLContext tx, UUID plan, LocalDate from) {
        Field<Integer> degreeBefore =
                DSL.round(SEASON_PLAN_WARMTH.CELSIUS_BEFORE).coerce(Integer.class);
        Condition cannotBear = SEASON_PLAN_WARMTH
                .CELSIUS_BEFORE
                .isNull()
                .or(degreeBefore.lt(QUARTER_DAY.LOW_C))
                .or(degreeBefore.gt(QUARTER_DAY.HIGH_C));
        // What came or was moved here since then had its days reckoned at this temperature.
        Condition cameSince = STAY.MADE_AT
                .ge(SEASON_PLAN.PUBLISHED_AT)
                .or(DSL.exists(DSL.selectOne()
                        .from(STAY_MOVE)
                        .where(STAY_MOVE.NEW_STAY_ID.eq(STAY.ID), STAY_MOVE.MOVED_AT.ge(SEASON_PLAN.PUBLISHED_AT))));
        Map<UUID, Set<LocalDate>> needed = new LinkedHashMap<>();
        tx.selectDistinct(QUARTER_DAY.MAT_ID, QUARTER_DAY.ON_DAY)
                .from(SEASON_PLAN_WARMTH)
                .join(SEASON_PLAN)
                .on(SEASON_PLAN.ID.eq(SEASON_PLAN_WARMTH.PLAN_ID))
                .join(QUARTER_DAY)
                .on(QUARTER_DAY.MAT_ID.eq(SEASON_PLAN_WARMTH.MAT_ID), QUARTER_DAY.ON_DAY.eq(SEASON_PLAN_WARMTH.ON_DAY))
                .join(STAY)
                .on(STAY.ID.eq(QUARTER_DAY.STAY_ID))
                .where(SEASON_PLAN_WARMTH.PLAN_ID.eq(plan), QUARTER_DAY.ON_DAY.ge(from), cannotBear.or(cameSince))
                .forEach(row -> needed.computeIfAbsent(row.value1(), none -> new java.util.HashSet<>())
                        .add(row.value2()));
        return needed;
    }

    private static void turnBack(DSLContext tx, Record day) {
        Condition thatDay = MAT_DAY.MAT_ID
                .eq(day.get(SEASON_PLAN_WARMTH.MAT_ID))
                .and(MAT_DAY.ON_DAY.eq(day.get(SEASON_PLAN_WARMTH.ON_DAY)));
        Double before = day.get(SEASON_PLAN_WARMTH.CELSIUS_BEFORE);
        if (before == null) {
            tx.deleteFrom(MAT_DAY).where(thatDay).execute();
        } else {
            tx.update(MAT_DAY)
                    .set(MAT_DAY.CELSIUS, before)
                    .set(MAT_DAY.BY_HAND, day.get(SEASON_PLAN_WARMTH.BY_HAND_BEFORE))
                    .where(thatDay)
                    .execute();
        }
    }
}
