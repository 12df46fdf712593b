package warmshelf.finding.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.crop.SeenEmergence;
import warmshelf.crop.TemperatureResponse;
import warmshelf.finding.statistics.ObservedShare;
import warmshelf.testing.Crops;

class EmergencePredictionsTest {
    private static final Crop PEPPER = Crops.of("pepper");
    private static final TemperatureResponse PUBLISHED = CropCatalogue.bundled().responseOf(PEPPER);
    private static final double TABLE_DAYS = PUBLISHED.at(25).orElseThrow().days();

    /** The spread that is stated for a sowing of which nothing is known here: 0.20, 0.15 and 0.25 together. */
    private static final double STATED = Math.sqrt(0.20 * 0.20 + 0.15 * 0.15 + 0.25 * 0.25);

    @Test
    void ranges_hold_as_often_as_told_where_the_stated_spread_is_true() {
        EmergencePredictions predictions = predictions(spread(2000, 1, STATED));

        assertThat(predictions.ranges()).hasSize(3);
        predictions.ranges().forEach(range -> assertThat(range.held().value()).isCloseTo(range.chance(), within(0.04)));
    }

    @Test
    void seed_that_is_half_as_quick_is_told_to_differ() {
        EmergencePredictions predictions = predictions(spread(12, 1.5, 0.15));

        assertThat(predictions.crops()).hasSize(1);
        assertThat(predictions.crops().get(0).ratio()).isCloseTo(1.5, within(0.15));
        assertThat(predictions.crops().get(0).differs()).isTrue();
    }

    @Test
    void two_sowings_of_a_crop_are_no_evidence() {
        assertThat(predictions(spread(2, 1.5, 0.15)).crops()).isEmpty();
    }

    @Test
    void nothing_seen_tells_nothing() {
        EmergencePredictions none = EmergencePredictions.of(Map.of(), crop -> PUBLISHED);

        assertThat(none.ranges()).isEmpty();
        assertThat(none.widest()).isEmpty();
    }

    @Test
    void what_came_on_the_published_day_holds_in_every_range() {
        SeenEmergence onTheDay = new SeenEmergence(
                UUID.randomUUID(), UUID.randomUUID(), Method.CELLS, 25, TABLE_DAYS - 0.2, TABLE_DAYS + 0.2);

        assertThat(predictions(List.of(onTheDay)).ranges())
                .extracting(ToldRange::held)
                .containsOnly(new ObservedShare(1, 1));
    }

    @Test
    void narrow_ranges_that_hold_too_often_are_told_though_the_widest_cannot_hold_more() {
        assertThat(PredictionWords.of(predictions(spread(24, 1, 0.05))))
                .contains("Ranges held more often than was told: the figures are more careful than they need be.");
        assertThat(PredictionWords.of(predictions(spread(200, 1, STATED)))).contains("That fits what was told.");
    }

    private static EmergencePredictions predictions(List<SeenEmergence> seen) {
        return EmergencePredictions.of(Map.of(PEPPER, seen), crop -> PUBLISHED);
    }

    private static List<SeenEmergence> spread(int sowings, double ratio, double logSpread) {
        Random random = new Random(7);
        List<SeenEmergence> seen = new ArrayList<>();
        for (int i = 0; i < sowings; i++) {
            double days = TABLE_DAYS * ratio * Math.exp(logSpread * random.nextGaussian());
            seen.add(new SeenEmergence(
                    UUID.randomUUID(), UUID.randomUUID(), Method.CELLS, 25, days - 0.01, days + 0.01));
        }
        return seen;
    }
}
