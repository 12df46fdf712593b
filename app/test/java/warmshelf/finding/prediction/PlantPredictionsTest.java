package warmshelf.finding.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.random.JDKRandomGenerator;
import org.apache.commons.math3.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.PlantOutlook;
import warmshelf.testing.Crops;

class PlantPredictionsTest {
    private static final Crop PEPPER = Crops.of("pepper");
    private static final double LIVES = 0.9;

    /** Drawn by a general library from the very distribution that is told: beta for the share, binomial for seeds and for seedlings. */
    @Test
    void ranges_and_promises_hold_as_often_as_told_where_the_model_is_true() {
        PlantPredictions predictions = PlantPredictions.of(drawn(1500, 1), 0);

        predictions.ranges().forEach(range -> assertThat(range.held().value()).isCloseTo(range.chance(), within(0.04)));
        predictions
                .wanted()
                .orElseThrow()
                .bins()
                .forEach(bin -> assertThat(bin.came().value()).isCloseTo(bin.chance(), within(0.05)));
    }

    @Test
    void seed_of_which_half_dies_is_told_to_differ() {
        PlantPredictions predictions = PlantPredictions.of(drawn(20, 0.5), 0);

        assertThat(predictions.crops()).singleElement().satisfies(crop -> {
            assertThat(crop.differs()).isTrue();
            assertThat(crop.seen()).isLessThan((int) crop.told());
        });
        assertThat(PredictionWords.of(predictions))
                .anyMatch(each -> each.startsWith("Ranges held less often than was told"));
    }

    @Test
    void two_sowings_are_no_evidence_and_the_page_says_so() {
        PlantPredictions predictions = PlantPredictions.of(drawn(2, 1), 1);

        assertThat(predictions.crops()).isEmpty();
        assertThat(PredictionWords.of(predictions))
                .contains("Fewer than 8 are too few to judge by.")
                .anyMatch(each -> each.startsWith("1 sowing ended too and cannot be compared"));
    }

    @Test
    void nothing_ended_tells_nothing() {
        PlantPredictions none = PlantPredictions.of(List.of(), 0);

        assertThat(none.ranges()).isEmpty();
        assertThat(PredictionWords.of(none)).singleElement().asString().startsWith("Nothing to compare yet.");
    }

    /** Of 20 seeds of which each gives a plant with 0.72, the general library's binomial: 5 % points 11 and 18. */
    @Test
    void the_range_of_a_known_share_is_that_of_the_binomial_distribution() {
        PlantPrediction told = new PlantPrediction(
                UUID.randomUUID(),
                2027,
                PEPPER,
                20,
                new PlantOutlook(GerminationShare.exactly(0.8), LIVES, 1, 20),
                12,
                14);
        BinomialDistribution general = new BinomialDistribution(20, 0.8 * LIVES);

        assertThat(told.low()).isEqualTo(general.inverseCumulativeProbability(0.05));
        assertThat(told.high()).isEqualTo(general.inverseCumulativeProbability(0.95));
        assertThat(told.chanceOfWanted()).isCloseTo(1 - general.cumulativeProbability(11), within(1e-9));
        assertThat(told.reached())
                .isCloseTo(general.cumulativeProbability(13) + general.probability(14) / 2, within(1e-9));
    }

    private static List<PlantPrediction> drawn(int sowings, double afterwards) {
        RandomGenerator random = new JDKRandomGenerator(11);
        Random sizes = new Random(3);
        List<PlantPrediction> drawn = new ArrayList<>();
        for (int i = 0; i < sowings; i++) {
            int seeds = 12 + sizes.nextInt(24);
            double share = new BetaDistribution(random, 17.5, 3.5).sample();
            int up = new BinomialDistribution(random, seeds, share).sample();
            int plants = new BinomialDistribution(random, up, LIVES * afterwards).sample();
            drawn.add(new PlantPrediction(
                    UUID.randomUUID(),
                    2027,
                    PEPPER,
                    seeds,
                    new PlantOutlook(new GerminationShare.Uncertain(17.5, 3.5), LIVES, 1, seeds),
                    (int) (0.6 * seeds),
                    plants));
        }
        return drawn;
    }
}
