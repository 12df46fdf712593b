package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import warmshelf.seed.AgedSeed;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.SeedExpectation;
import warmshelf.seed.SeedSource;
import warmshelf.seed.Storage;
import warmshelf.seed.StorageKind;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class SeedPlanTest {
    private static final SeedExpectation FOUR_FIFTHS = SeedExpectation.known(GerminationShare.exactly(0.8));

    @Test
    void the_seeds_are_the_fewest_that_give_the_plants_nine_times_in_ten() {
        SeedPlan plan = SeedPlan.of(10, FOUR_FIFTHS, 1, 0.9, null, 36, false);

        // Each seed ends as a plant with 0.8 x 0.9; the binomial distribution of a reference library judges.
        assertThat(plan.problem()).isNull();
        assertThat(atLeast(10, plan.seeds(), 0.72)).isGreaterThanOrEqualTo(0.9);
        assertThat(atLeast(10, plan.seeds() - 1, 0.72)).isLessThan(0.9);
        assertThat(plan.cells()).isEqualTo(plan.seeds());
        assertThat(plan.probability()).isCloseTo(atLeast(10, plan.seeds(), 0.72), within(1e-9));
        assertThat(plan.expected()).isCloseTo(plan.seeds() * 0.72, within(1e-9));
    }

    @Test
    void two_seeds_to_a_cell_take_fewer_cells_and_twice_the_seeds() {
        SeedPlan plan = SeedPlan.of(10, FOUR_FIFTHS, 2, 0.9, null, 36, false);

        // Two seeds at 80 % give 96 % of the cells a seedling: 1 - 0.2 x 0.2.
        assertThat(plan.seeds()).isEqualTo(2 * plan.cells());
        assertThat(atLeast(10, plan.cells(), 0.96 * 0.9)).isGreaterThanOrEqualTo(0.9);
        assertThat(atLeast(10, plan.cells() - 1, 0.96 * 0.9)).isLessThan(0.9);
        assertThat(plan.expected()).isCloseTo(plan.cells() * 0.96 * 0.9, within(1e-9));
    }

    @Test
    void a_packet_with_too_few_seeds_says_how_many_it_has_and_how_many_are_needed() {
        int needed = SeedPlan.of(10, FOUR_FIFTHS, 1, 0.9, null, 36, false).seeds();

        SeedPlan plan = SeedPlan.of(10, FOUR_FIFTHS, 1, 0.9, 9, 36, false);

        assertThat(plan.problem())
                .extracting(problem -> problem.words(Units.METRIC))
                .isEqualTo("This lot has 9 seeds, and " + needed + " are needed for 10 plants nine times in ten."
                        + " That is too few: expect about 6 of"
                        + " the 10 plants. Ask for fewer plants, choose"
                        + " another lot, or tick 'sow what is left'.");
        assertThat(SeedPlan.of(10, FOUR_FIFTHS, 1, 0.9, needed, 36, false).problem())
                .as("just enough is enough")
                .isNull();
        assertThat(SeedPlan.of(10, FOUR_FIFTHS, 1, 0.9, needed - 1, 36, false).problem())
                .isNotNull();
    }

    @Test
    void whoever_accepts_fewer_sows_what_is_left() {
        SeedPlan plan = SeedPlan.of(10, FOUR_FIFTHS, 2, 0.9, 9, 36, true);

        assertThat(plan.problem()).isNull();
        assertThat(plan.seeds()).isEqualTo(9);
        assertThat(plan.cells()).as("the odd seed has a cell too").isEqualTo(5);
    }

    @Test
    void a_lot_that_is_used_up_cannot_be_sown_even_by_who_accepts_fewer() {
        assertThat(SeedPlan.of(10, FOUR_FIFTHS, 1, 0.9, 0, 36, false).problem())
                .isEqualTo(new SeedTrouble.NoneLeft("This lot is used up"));
        assertThat(SeedPlan.of(10, FOUR_FIFTHS, 1, 0.9, 0, 36, true).problem())
                .isEqualTo(new SeedTrouble.NoneLeft("This lot is used up"));
    }

    @Test
    void more_cells_than_the_tray_has_are_refused_with_both_figures() {
        int needed = SeedPlan.of(30, FOUR_FIFTHS, 1, 0.9, null, 200, false).cells();

        assertThat(SeedPlan.of(30, FOUR_FIFTHS, 1, 0.9, null, needed, false).problem())
                .isNull();
        assertThat(SeedPlan.of(30, FOUR_FIFTHS, 1, 0.9, null, needed - 1, false).problem())
                .isEqualTo(new SeedTrouble.TooFewCells(needed, needed - 1, false));
    }

    @Test
    void seed_of_which_next_to_nothing_comes_up_sends_to_another_lot() {
        assertThat(SeedPlan.of(1000, SeedExpectation.known(GerminationShare.exactly(0.0001)), 1, 0.9, null, 36, false)
                        .problem())
                .isEqualTo(new SeedTrouble.NextToNothingComesUp());
    }

    @Test
    void old_seed_asks_for_a_test_and_what_to_sow_meanwhile_fits_the_tray() {
        SeedPlan plan = SeedPlan.of(12, oldOnion(), 1, 1, null, 40, false);

        assertThat(plan.problem()).isNull();
        assertThat(plan.testFirst()).isTrue();
        assertThat(plan.cells()).isEqualTo(40);
        assertThat(plan.probability()).isBetween(0.3, 0.9);
    }

    @Test
    void what_is_left_of_old_seed_is_sown_meanwhile_unless_it_were_too_little_of_fresh_seed() {
        int fresh = SeedPlan.of(12, SeedExpectation.known(oldOnion().unaged()), 1, 1, null, 200, false)
                .seeds();

        assertThat(SeedPlan.of(12, oldOnion(), 1, 1, 30, 200, false))
                .returns(30, SeedPlan::seeds)
                .returns(true, SeedPlan::testFirst)
                .returns(null, SeedPlan::problem);
        assertThat(SeedPlan.of(12, oldOnion(), 1, 1, fresh - 1, 200, false))
                .returns(true, SeedPlan::testFirst)
                .satisfies(plan -> assertThat(plan.problem()).isInstanceOf(SeedTrouble.TestFirst.class));
        assertThat(SeedPlan.of(12, oldOnion(), 1, 1, null, fresh - 1, false).problem())
                .isInstanceOf(SeedTrouble.TooFewCells.class);
    }

    @Test
    void seed_that_was_tested_now_needs_no_other_test_however_little_came_up() {
        SeedPlan plan = SeedPlan.of(12, SeedExpectation.known(oldOnion().share()), 1, 1, null, 100_000, false);

        assertThat(plan.testFirst()).isFalse();
        assertThat(plan.probability()).isGreaterThanOrEqualTo(0.9);
    }

    /** Two years in a warm room: once '24,047 cells are needed'. */
    private static SeedExpectation oldOnion() {
        return AgedSeed.expectation(Crops.of("onion"), SeedSource.PACKET, Storage.of(StorageKind.SHED), 2);
    }

    private static double atLeast(int plants, int seeds, double share) {
        return BinomialDistribution.of(seeds, share).survivalProbability(plants - 1);
    }
}
