package warmshelf.finding.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Crops;

class PlantingOutPredictionsTest {
    private static final LocalDate PLANNED = LocalDate.of(2027, 5, 28);

    @Test
    void what_goes_out_a_week_late_each_time_is_said_to() {
        PlantingOutPredictions late = daysLater(6, 7, 8, 7);

        assertThat(late.later().orElseThrow().mean()).isCloseTo(7, within(1e-9));
        assertThat(late.crops())
                .singleElement()
                .satisfies(crop -> assertThat(crop.later().differsFromZero()).isTrue());
        assertThat(PredictionWords.of(late).get(1)).startsWith("On average they went out 7 days after the day planned");
    }

    @Test
    void days_planned_run_from_the_first_to_the_last_of_them() {
        // planned three days either way
        assertThat(daysLater(-4, -3, 0, 3, 4).within().orElseThrow().came()).isEqualTo(3);
    }

    @Test
    void two_sowings_have_no_average_and_the_page_says_so() {
        assertThat(PredictionWords.of(daysLater(0, 9)))
                .containsExactly(
                        "1 of 2 sowings went out on one of the days planned when they were sown (95 % range 9\u2060–\u206091 %).",
                        "Fewer than 3 are too few for an average.");
    }

    @Test
    void nothing_that_went_out_tells_nothing() {
        assertThat(PredictionWords.of(daysLater())).singleElement().asString().startsWith("Nothing to compare yet.");
    }

    private static PlantingOutPredictions daysLater(int... days) {
        List<PlantingOutPrediction> sowings = Arrays.stream(days)
                .mapToObj(later -> new PlantingOutPrediction(
                        UUID.randomUUID(),
                        2027,
                        Crops.of("pepper"),
                        PLANNED.minusDays(3),
                        PLANNED,
                        PLANNED.plusDays(3),
                        PLANNED.plusDays(later)))
                .toList();
        return PlantingOutPredictions.of(sowings);
    }
}
