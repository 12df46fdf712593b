package warmshelf.sowing;

import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SOWING_RESULT;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import warmshelf.allocation.SpaceRequest;
import warmshelf.db.Database;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.Lot;
import warmshelf.seed.LotStore;
import warmshelf.seed.LotUse;
import warmshelf.seed.SeedHold;
import warmshelf.seed.SeedHoldStore;

/**
 * What the group's own sowings tell of its seed: how much came up, how much lived, what is still meant to be sown, and which seed
 * that holds.
 */
public final class LotUseStore implements LotUse, SeedHoldStore {
    private static final List<String> HOLDING =
            List.of(SpaceRequest.State.WAITING.word(), SpaceRequest.State.PLACED.word());

    private final DSLContext sql;

    public LotUseStore(Database database) {
        this.sql = database.sql();
    }

    /** Tests of a lot, and what came of it in sowings that are finished. */
    public List<GerminationTest> evidence(LotStore lots, Lot lot) {
        List<GerminationTest> evidence = new ArrayList<>(lots.tests(lot.id()));
        evidence.addAll(results(List.of(lot.id())).getOrDefault(lot.id(), List.of()));
        return evidence;
    }

    @Override
    public Map<UUID, List<GerminationTest>> results(Collection<UUID> lotIds) {
        if (lotIds.isEmpty()) {
            return Map.of();
        }
        return sql.select(SOWING_RESULT.LOT_ID, SOWING_RESULT.SOWN_ON, SOWING_RESULT.CAME_UP, SOWING_RESULT.SEEDS)
                .from(Database.listed(SOWING_RESULT, SOWING_RESULT.LOT_ID, lotIds))
                .where(SOWING_RESULT.CAME_UP.isNotNull())
                .orderBy(SOWING_RESULT.SOWN_ON.desc(), SOWING_RESULT.SOWING_ID)
                .fetchGroups(row -> row.value1(), row -> new GerminationTest(row.value2(), row.value3(), row.value4()));
    }

    @Override
    public Map<UUID, Meant> meant(int season) {
        return sql.select(SOWING.LOT_ID, DSL.count(), DSL.sum(SOWING.PLANTS_WANTED))
                .from(SOWING)
                .where(SowingStore.ofSeason(season), SOWING.STAGE.in(SowingStage.BEFORE_SOWING))
                .groupBy(SOWING.LOT_ID)
                .fetchMap(
                        row -> row.value1(),
                        row -> new Meant(row.value2(), row.value3().intValue()));
    }

    /**
     * Chilled and soaked seed is out of its packet; of what is only planned, what was refused a place, or whose seed was refused or is gone,
     * holds none.
     */
    @Override
    public Map<UUID, List<SeedHold>> holds(DSLContext from, Collection<UUID> lotIds) {
        Condition wanted = SOWING.STAGE
                .in(SowingStage.CHILLED.word(), SowingStage.SOAKED.word())
                .or(SOWING.STAGE
                        .eq(SowingStage.PLANNED.word())
                        .and(SPACE_REQUEST.STATE.isNull().or(SPACE_REQUEST.STATE.in(HOLDING))));
        return from.select(SOWING.LOT_ID, SOWING.ID, MEMBER.ID, MEMBER.CALLED, SOWING.SEEDS, LOT_REQUEST.STATE)
                .from(Database.listed(SOWING, SOWING.LOT_ID, lotIds))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .leftJoin(SPACE_REQUEST)
                .on(SPACE_REQUEST.SOWING_ID.eq(SOWING.ID))
                .leftJoin(LOT_REQUEST)
                .on(LOT_REQUEST.SOWING_ID.eq(SOWING.ID))
                .where(wanted, LOT_REQUEST.STATE.isNull().or(LOT_REQUEST.STATE.in(LotRequest.State.HOLDING)))
                .orderBy(SOWING.ASKED_AT, SOWING.ID)
                .fetchGroups(
                        SOWING.LOT_ID,
                        row -> new SeedHold(
                                row.get(SOWING.ID),
                                row.get(MEMBER.ID),
                                row.get(MEMBER.CALLED),
                                row.get(SOWING.SEEDS),
                                LotRequest.State.WAITING.word().equals(row.get(LOT_REQUEST.STATE))));
    }

    /** How many of the group's seedlings lived from emergence to planting out, in this season and the two before it. */
    public Survival survival(int season) {
        return survival(season - 2, season);
    }

    /** The same as it was known when a season began: from the two before it. */
    public Survival survivalBefore(int season) {
        return survival(season - 2, season - 1);
    }

    private Survival survival(int first, int last) {
        return sql.select(
                        DSL.coalesce(DSL.sum(SOWING_RESULT.LIVED), BigDecimal.ZERO),
                        DSL.coalesce(DSL.sum(SOWING_RESULT.WAS_UP), BigDecimal.ZERO),
                        DSL.count())
                .from(SOWING_RESULT)
                .where(SOWING_RESULT.SEASON.between(first, last), SOWING_RESULT.WAS_UP.isNotNull())
                .fetchSingle(row -> Survival.COMMON_PRACTICE.after(
                        row.value1().intValue(), row.value2().intValue(), row.value3()));
    }
}
