package warmshelf.sowing;

import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import warmshelf.allocation.SpaceRequest;
import warmshelf.crop.Method;
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
    // Seed that is up, or was given up; before that more may still come.
    private static final List<String> FINISHED = List.of(
            SowingStage.UNDER_LIGHT.word(),
            SowingStage.FED.word(),
            SowingStage.POTTED_ON.word(),
            SowingStage.HARDENING_OFF.word(),
            SowingStage.PLANTED_OUT.word(),
            SowingStage.GIVEN_UP.word());
    private static final List<String> PLANTS_COUNTED =
            List.of(SowingStage.HARDENING_OFF.word(), SowingStage.PLANTED_OUT.word(), SowingStage.GIVEN_UP.word());

    private static final List<String> HOLDING =
            List.of(SpaceRequest.State.WAITING.word(), SpaceRequest.State.PLACED.word());

    private final DSLContext sql;
    private final EntryStore entries;

    public LotUseStore(Database database, EntryStore entries) {
        this.sql = database.sql();
        this.entries = entries;
    }

    /** Tests of a lot, and what came of it in sowings that are finished. */
    public List<GerminationTest> evidence(LotStore lots, Lot lot) {
        List<GerminationTest> evidence = new ArrayList<>(lots.tests(lot.id()));
        evidence.addAll(results(List.of(lot.id())).getOrDefault(lot.id(), List.of()));
        return evidence;
    }

    @Override
    public Map<UUID, List<GerminationTest>> results(Collection<UUID> lotIds) {
        Map<UUID, List<GerminationTest>> results = new HashMap<>();
        for (Outcome outcome : outcomes(SOWING.LOT_ID.in(lotIds).and(SOWING.STAGE.in(FINISHED)))) {
            outcome.result()
                    .ifPresent(result -> results.computeIfAbsent(outcome.lotId(), lot -> new ArrayList<>())
                            .add(result));
        }
        results.values()
                .forEach(each -> each.sort(
                        Comparator.comparing(GerminationTest::testedOn).reversed()));
        return results;
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
        return survival(SowingStore.ofSeasonAndBefore(season, 2));
    }

    /** The same as it was known when a season began: from the two before it. */
    public Survival survivalBefore(int season) {
        return survival(SowingStore.ofSeasonAndBefore(season - 1, 1));
    }

    private Survival survival(Condition seasons) {
        Survival survival = Survival.COMMON_PRACTICE;
        for (Outcome outcome : outcomes(seasons.and(SOWING.STAGE.in(PLANTS_COUNTED)))) {
            if (outcome.progress().up() > 0) {
                survival = survival.after(outcome.lived(), outcome.progress().up());
            }
        }
        return survival;
    }

    private List<Outcome> outcomes(Condition which) {
        List<Record> rows = List.copyOf(sql.select(SOWING.ID, SOWING.LOT_ID, SOWING.METHOD, SOWING.SEEDS, SOWING.STAGE)
                .from(SOWING)
                .where(which)
                .fetch());
        if (rows.isEmpty()) {
            return List.of();
        }
        Map<UUID, List<Entry>> seen = entries.ofSowings(
                sql, rows.stream().map(row -> row.get(SOWING.ID)).toList());
        return rows.stream()
                .map(row -> outcome(row, seen.getOrDefault(row.get(SOWING.ID), List.of())))
                .toList();
    }

    private static Outcome outcome(Record row, List<Entry> seen) {
        int seeds = row.get(SOWING.SEEDS);
        Progress progress = Progress.of(Method.named(row.get(SOWING.METHOD)), seeds, seen);
        return new Outcome(row.get(SOWING.LOT_ID), seeds, progress);
    }

    private record Outcome(UUID lotId, int seeds, Progress progress) {
        /**
         * What came up of what was sown. Empty where nobody counted, and where it was given up after a problem: that tells of the
         * problem and not of the seed.
         */
        Optional<GerminationTest> result() {
            LocalDate sown = progress.seen().sown();
            int up = Math.min(seeds, Math.max(progress.sprouted(), progress.up()));
            boolean givenUp = progress.stage() == SowingStage.GIVEN_UP;
            boolean nobodyCounted = up == 0 && !givenUp;
            boolean accident = givenUp && progress.lastProblem() != null;
            return sown == null || nobodyCounted || accident
                    ? Optional.empty()
                    : Optional.of(new GerminationTest(sown, up, seeds));
        }

        /** What was given up did not live. */
        int lived() {
            return progress.stage() == SowingStage.GIVEN_UP ? 0 : Math.min(progress.up(), progress.alive());
        }
    }
}
