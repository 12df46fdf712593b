package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SeedCountTest {
    private static final int[] WANTED = {1, 2, 4, 6, 12, 24, 48};

    // The table of the reference collection (statistics.md, part e): exact binomial, 90 %.
    @ParameterizedTest
    @CsvSource({
        "0.50, '4 7 12 17 31 57 109'",
        "0.60, '3 5 9 13 25 47 90'",
        "0.70, '2 4 8 11 21 39 76'",
        "0.80, '2 4 6 9 18 34 65'",
        "0.90, '1 3 5 8 15 29 57'",
        "0.95, '1 2 5 7 14 27 53'"
    })
    void nine_in_ten_sure_counts_are_those_of_the_binomial_table(double share, String seeds) {
        assertThat(seedsFor(share, 0.90)).isEqualTo(numbers(seeds));
    }

    // The same table, 95 %.
    @ParameterizedTest
    @CsvSource({
        "0.50, '5 8 13 18 33 60 113'",
        "0.60, '4 6 11 15 27 49 93'",
        "0.70, '3 5 9 12 22 41 78'",
        "0.80, '2 4 7 10 19 35 67'",
        "0.90, '2 3 6 8 16 30 58'",
        "0.95, '1 3 5 7 14 27 53'"
    })
    void nineteen_in_twenty_sure_counts_are_those_of_the_binomial_table(double share, String seeds) {
        assertThat(seedsFor(share, 0.95)).isEqualTo(numbers(seeds));
    }

    // The second opinion: commons-math3, another implementation than the one the application uses.
    @ParameterizedTest
    @CsvSource({"1, 0.55", "7, 0.31", "48, 0.8", "250, 0.77", "3000, 0.93"})
    void one_seed_fewer_would_miss_the_confidence(int wanted, double share) {
        SeedCount count = count(new SeedQuestion(wanted, 0.9, GerminationShare.exactly(share), 1, 1));

        assertThat(chance(wanted, count.seeds(), share)).isGreaterThanOrEqualTo(0.9);
        assertThat(chance(wanted, count.seeds() - 1, share)).isLessThan(0.9);
        assertThat(count.probability()).isCloseTo(chance(wanted, count.seeds(), share), within(1e-9));
    }

    @Test
    void plants_that_die_later_are_sown_for_as_well() {
        SeedCount dying = count(new SeedQuestion(24, 0.9, GerminationShare.exactly(0.8), 0.75, 1));
        SeedCount poorer = count(new SeedQuestion(24, 0.9, GerminationShare.exactly(0.6), 1, 1));

        assertThat(dying.seeds()).isEqualTo(poorer.seeds()).isEqualTo(47);
    }

    @Test
    void two_seeds_to_a_cell_need_fewer_cells_and_more_seed() {
        // A cell is not empty with chance 0.96 (the reference table); so the binomial at 0.96 says how many cells.
        SeedCount pairs = count(new SeedQuestion(12, 0.9, GerminationShare.exactly(0.8), 1, 2));

        assertThat(pairs.atLeastOne()).isCloseTo(0.96, within(1e-12));
        assertThat(pairs.cells()).isEqualTo(13);
        assertThat(pairs.seeds()).isEqualTo(26);
        assertThat(chance(12, 13, 0.96)).isGreaterThanOrEqualTo(0.9);
        assertThat(chance(12, 12, 0.96)).isLessThan(0.9);
    }

    @Test
    void a_small_test_asks_for_more_seed_than_a_known_share() {
        int known = count(new SeedQuestion(24, 0.9, GerminationShare.exactly(0.85), 1, 1))
                .seeds();
        int tested = count(new SeedQuestion(24, 0.9, GerminationShare.tested(17, 20), 1, 1))
                .seeds();

        assertThat(tested).isGreaterThan(known);
    }

    @Test
    void an_uncertain_share_that_is_nearly_known_needs_what_a_known_one_needs() {
        int known = count(new SeedQuestion(24, 0.9, GerminationShare.exactly(0.8), 0.9, 2))
                .seeds();
        int nearly = count(new SeedQuestion(24, 0.9, GerminationShare.tested(80_000, 100_000), 0.9, 2))
                .seeds();

        assertThat(nearly).isEqualTo(known);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.5, 0.999})
    void five_thousand_plants_can_be_asked_for(double share) {
        SeedCount count = count(new SeedQuestion(5_000, 0.95, GerminationShare.exactly(share), 1, 1));

        assertThat(count.seeds()).isGreaterThan((int) (5_000 / share));
        assertThat(count.probability()).isBetween(0.95, 0.97);
    }

    @Test
    void five_thousand_plants_from_a_tested_lot_stay_a_number() {
        SeedCount count = count(new SeedQuestion(5_000, 0.9, GerminationShare.tested(9, 10), 1, 1));

        // With so many seeds only the doubt about the share is left: its tenth percentile decides.
        double tenth =
                new org.apache.commons.math3.distribution.BetaDistribution(9.5, 1.5).inverseCumulativeProbability(0.1);
        assertThat(count.seeds()).isCloseTo((int) (5_000 / tenth), org.assertj.core.data.Percentage.withPercentage(1));
    }

    @Test
    void seed_that_never_came_up_cannot_give_thousands_of_plants() {
        assertThat(SeedCount.of(new SeedQuestion(5_000, 0.99, GerminationShare.tested(0, 100), 1, 1)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, 0.9, 1, 1", "10001, 0.9, 1, 1", "5, 0, 1, 1", "5, 1, 1, 1", "5, 0.9, 0, 1", "5, 0.9, 1, 0"})
    void impossible_questions_are_refused(int wanted, double confidence, double survival, int perCell) {
        assertThatThrownBy(() -> new SeedQuestion(wanted, confidence, GerminationShare.exactly(0.8), survival, perCell))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static int[] seedsFor(double share, double confidence) {
        return Arrays.stream(WANTED)
                .map(n -> count(new SeedQuestion(n, confidence, GerminationShare.exactly(share), 1, 1))
                        .seeds())
                .toArray();
    }

    private static SeedCount count(SeedQuestion question) {
        return SeedCount.of(question).orElseThrow();
    }

    private static double chance(int wanted, int seeds, double share) {
        return 1 - new BinomialDistribution(null, seeds, share).cumulativeProbability(wanted - 1);
    }

    private static int[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToInt(Integer::parseInt).toArray();
    }
}
