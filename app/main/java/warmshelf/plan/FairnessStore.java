package warmshelf.plan;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.PLAN_NOTE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.allocation.SpaceRequest;
import warmshelf.db.Database;
import warmshelf.sowing.SowingStore;
import warmshelf.words.Units;

/** Reads who asked for how much of the mats in a season, and what each got. */
final class FairnessStore {
    private final DSLContext sql;

    FairnessStore(Database database) {
        this.sql = database.sql();
    }

    /**
     * The requests of a season that were not withdrawn, with what each got, by member and in the order of asking.
     *
     * @param units of whoever reads why some have no place
     */
    List<Fairness.Asking> askings(int season, Map<UUID, Integer> choices, Units units) {
        Map<UUID, Integer> got = quarterDays(season);
        Map<UUID, String> told = told(units);
        return sql.select(
                        SOWING.ID,
                        MEMBER.ID,
                        MEMBER.CALLED,
                        LOT.VARIETY,
                        SPACE_REQUEST.STATE,
                        SPACE_REQUEST.QUARTERS,
                        SPACE_REQUEST.DAYS,
                        SPACE_REQUEST.REASON)
                .from(SPACE_REQUEST)
                .join(SOWING)
                .on(SOWING.ID.eq(SPACE_REQUEST.SOWING_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .where(SowingStore.ofSeason(season), SPACE_REQUEST.STATE.ne("withdrawn"))
                .orderBy(MEMBER.CALLED, MEMBER.ID, SOWING.ASKED_AT, SOWING.ID)
                .fetch(row -> new Fairness.Asking(
                        row.value2(),
                        row.value3(),
                        row.value4(),
                        SpaceRequest.State.named(row.value5()),
                        choices.getOrDefault(row.value1(), 0),
                        row.value6() * row.value7(),
                        got.getOrDefault(row.value1(), 0),
                        row.value8().isEmpty() ? told.getOrDefault(row.value1(), "") : row.value8()));
    }

    private Map<UUID, Integer> quarterDays(int season) {
        Map<UUID, Integer> sums = new HashMap<>();
        sql.select(STAY.SOWING_ID, STAY.QUARTERS, STAY.FROM_DAY, STAY.TO_DAY)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .where(SowingStore.ofSeason(season), PLACE.KIND.eq("mat"))
                .forEach(row -> sums.merge(
                        row.value1(),
                        row.value2()
                                * (int) (row.value4().toEpochDay()
                                        - row.value3().toEpochDay()),
                        Integer::sum));
        return sums;
    }

    /** Why the last publication left a request waiting. */
    private Map<UUID, String> told(Units units) {
        Map<UUID, String> told = new HashMap<>();
        sql.select(PLAN_NOTE.SOWING_ID, PLAN_NOTE.WORDS, PLAN_NOTE.REFUSED)
                .from(PLAN_NOTE)
                .where(PLAN_NOTE.PLACED.isFalse())
                .orderBy(PLAN_NOTE.MADE_AT)
                .forEach(row -> told.put(
                        row.value1(), PlanNews.kept(row.value2(), row.value3()).words(units)));
        return told;
    }
}
