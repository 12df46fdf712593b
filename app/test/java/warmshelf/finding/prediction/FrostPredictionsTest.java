package warmshelf.finding.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.FrostEvidence;
import warmshelf.frost.FrostSeason;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.evidence.GroupEvidence;
import warmshelf.frost.garden.GardenPoint;
import warmshelf.frost.garden.ThermometerRecord;
import warmshelf.frost.minima.DailyMinima;
import warmshelf.frost.station.Side;

class FrostPredictionsTest {
    private static final FrostClimate TOLD = new FrostClimate(
            "Hill",
            46.8,
            -92.1,
            300,
            new FrostSeason(1, 140, 0, 0, 10, 0, 0),
            new FrostSeason(1, 270, 0, 0, 10, 0, 0),
            new FrostEvidence(null, List.of(), 0, null, List.of()));

    /** Seasons drawn from the very normal distribution that is told. */
    @Test
    void frost_comes_beyond_the_day_told_as_often_as_told_where_the_climate_is_true() {
        FrostPredictions predictions = FrostPredictions.of(drawn(2000, 0));

        assertThat(predictions.risks()).hasSize(6);
        predictions.risks().forEach(risk -> assertThat(risk.came().value()).isCloseTo(risk.chance(), within(0.03)));
    }

    @Test
    void a_hollow_that_freezes_two_weeks_longer_is_told_to_be_worse_than_told() {
        FrostPredictions hollow = FrostPredictions.of(drawn(12, 14));

        assertThat(PredictionWords.of(hollow))
                .contains("That is more often than was told: be more careful than the dates are.");
    }

    @Test
    void a_year_without_frost_is_one_in_which_none_came_after_the_day_told() {
        FrostPredictions mild = FrostPredictions.of(List.of(season(Side.SPRING, null), season(Side.AUTUMN, null)));

        assertThat(mild.risks())
                .allSatisfy(risk -> assertThat(risk.came().came()).isZero());
        assertThat(PredictionWords.of(mild)).contains("Fewer than 8 are too few to judge by.");
    }

    @Test
    void a_thermometer_that_was_read_from_new_year_on_tells_of_its_spring_at_both_temperatures() {
        DailyMinima minima = new DailyMinima();
        LocalDate last = LocalDate.of(2026, 5, 20);
        for (LocalDate day = LocalDate.of(2026, 1, 1); day.isBefore(LocalDate.of(2026, 8, 1)); day = day.plusDays(1)) {
            minima.add(day, day.isAfter(last) ? 8 : day.equals(last) ? -0.5 : -5);
        }
        ThermometerRecord hill =
                new ThermometerRecord(UUID.randomUUID(), "Hill", null, new GardenPoint(46.8, -92.1, 300), minima);

        FrostPredictions predictions = FrostPredictions.of(List.of(hill), GroupEvidence.none());

        assertThat(predictions.seasons())
                .filteredOn(season -> season.side() == Side.SPRING)
                .extracting(FrostPrediction::threshold, FrostPrediction::seen)
                .containsExactly(tuple(Threshold.FROST, last), tuple(Threshold.KILLING, last.minusDays(1)));
    }

    @Test
    void nothing_read_tells_nothing() {
        assertThat(PredictionWords.of(FrostPredictions.of(List.of())))
                .singleElement()
                .asString()
                .startsWith("Nothing to compare yet.");
    }

    private static List<FrostPrediction> drawn(int years, double later) {
        Random random = new Random(5);
        List<FrostPrediction> drawn = new ArrayList<>();
        for (int i = 0; i < years; i++) {
            drawn.add(season(Side.SPRING, YearDay.in(2027, 140 + later + 10 * random.nextGaussian())));
            drawn.add(season(Side.AUTUMN, YearDay.in(2027, 270 + 10 * random.nextGaussian())));
        }
        return drawn;
    }

    private static FrostPrediction season(Side side, @Nullable LocalDate day) {
        return new FrostPrediction("Hill", 2027, side, Threshold.FROST, TOLD, day);
    }
}
