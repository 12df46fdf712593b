package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotUse.Meant;
import warmshelf.seed.NewLot;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class LotUseStoreContract extends StoreContract {
    private static final LocalDate SOWN = LocalDate.of(2027, 2, 1);

    private GrowRoom room;
    private EntryStore entries;
    private LotUseStore use;
    private UUID lot;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        entries = new EntryStore(audit());
        use = new LotUseStore(database());
        lot = room.lots().add(new NewLot("pepper", "Lantern Row", 2026, 100, null, false, ""), room.tom());
    }

    @Test
    void what_came_up_of_a_finished_sowing_counts_for_its_lot() {
        UUID sowing = room.peppersOf(lot);
        enter(sowing, EntryStep.SOWN, SOWN, null, null, null);
        enter(sowing, EntryStep.LOOK, SOWN.plusDays(12), 9, null, null);
        enter(sowing, EntryStep.UNDER_LIGHT, SOWN.plusDays(20), 10, null, null);
        room.sowings().moveTo(database().sql(), sowing, SowingStage.UNDER_LIGHT);

        assertThat(use.results(List.of(lot, UUID.randomUUID())))
                .isEqualTo(Map.of(lot, List.of(new GerminationTest(SOWN, 10, 12))));
    }

    @Test
    void seed_that_may_still_come_up_does_not_count_yet() {
        UUID sowing = room.peppersOf(lot);
        enter(sowing, EntryStep.SOWN, SOWN, null, null, null);
        enter(sowing, EntryStep.LOOK, SOWN.plusDays(12), 3, null, null);
        room.sowings().moveTo(database().sql(), sowing, SowingStage.EMERGED);

        assertThat(use.results(List.of(lot))).isEmpty();
    }

    @Test
    void a_sowing_that_nobody_counted_tells_nothing() {
        UUID sowing = room.peppersOf(lot);
        enter(sowing, EntryStep.SOWN, SOWN, null, null, null);
        enter(sowing, EntryStep.UNDER_LIGHT, SOWN.plusDays(20), null, null, null);
        room.sowings().moveTo(database().sql(), sowing, SowingStage.UNDER_LIGHT);

        assertThat(use.results(List.of(lot))).isEmpty();
    }

    @Test
    void seed_given_up_without_a_problem_tells_of_the_seed_and_with_one_of_the_problem() {
        UUID poor = room.peppersOf(lot);
        enter(poor, EntryStep.SOWN, SOWN, null, null, null);
        enter(poor, EntryStep.GAVE_UP, SOWN.plusDays(40), null, null, null);
        room.sowings().moveTo(database().sql(), poor, SowingStage.GIVEN_UP);
        UUID mouldy = room.peppersOf(lot);
        enter(mouldy, EntryStep.SOWN, SOWN, null, null, null);
        enter(mouldy, EntryStep.GAVE_UP, SOWN.plusDays(40), null, null, Problem.MOULD);
        room.sowings().moveTo(database().sql(), mouldy, SowingStage.GIVEN_UP);

        assertThat(use.results(List.of(lot))).isEqualTo(Map.of(lot, List.of(new GerminationTest(SOWN, 0, 12))));
    }

    @Test
    void what_is_planned_of_a_lot_is_summed_until_it_is_sown() {
        room.peppersOf(lot);
        room.peppersOf(lot);
        UUID sown = room.peppersOf(lot);
        room.sowings().moveTo(database().sql(), sown, SowingStage.SOWN);

        assertThat(use.meant(2027)).isEqualTo(Map.of(lot, new Meant(2, 16)));
        assertThat(use.meant(2028)).isEmpty();
    }

    @Test
    void losses_start_from_common_practice_and_follow_the_groups_own() {
        assertThat(use.survival(2027)).isEqualTo(Survival.COMMON_PRACTICE);

        UUID sowing = room.peppersOf(lot);
        enter(sowing, EntryStep.SOWN, SOWN, null, null, null);
        enter(sowing, EntryStep.LOOK, SOWN.plusDays(20), 10, 4, null);
        enter(sowing, EntryStep.PLANTED_OUT, SOWN.plusDays(100), null, null, null);
        room.sowings().moveTo(database().sql(), sowing, SowingStage.PLANTED_OUT);

        // Six of ten lived here, 18 of 20 by common practice.
        assertThat(use.survival(2027)).isEqualTo(new Survival(24, 30, 1));
        assertThat(use.survival(2027).words())
                .isEqualTo(
                        "about 20 in 100 seedlings are lost later (from 1 sowing of your group, and common practice)");
        assertThat(use.survival(2030)).as("three years later").isEqualTo(Survival.COMMON_PRACTICE);
    }

    private void enter(
            UUID sowing,
            EntryStep step,
            LocalDate on,
            @Nullable Integer sprouted,
            @Nullable Integer lost,
            @Nullable Problem problem) {
        OffsetDateTime at = on.atTime(9, 0).atOffset(ZoneOffset.UTC);
        List<Entry> before = entries.ofSowing(database().sql(), sowing);
        entries.add(
                database().sql(),
                new Entry(
                        UUID.randomUUID(),
                        sowing,
                        step,
                        on,
                        at,
                        sprouted,
                        null,
                        lost,
                        false,
                        problem,
                        "",
                        null,
                        room.tom(),
                        ""));
        SowingResultStore.keep(
                database().sql(),
                room.sowings().find(sowing).orElseThrow(),
                before,
                entries.ofSowing(database().sql(), sowing),
                on);
    }
}
