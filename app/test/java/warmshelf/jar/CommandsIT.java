package warmshelf.jar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands of the packaged jar: one JSON object each, with the fields that scripts rely on. */
class CommandsIT {
    @Test
    void frost_answers_for_a_postcode() {
        JsonNode answer = answerTo("frost", "55802", "--season", "2027");

        assertThat(answer.fieldNames())
                .toIterable()
                .contains(
                        "evidence",
                        "place",
                        "latitude",
                        "longitude",
                        "elevationM",
                        "spring",
                        "autumn",
                        "stations",
                        "notes");
        for (String season : new String[] {"spring", "autumn"}) {
            assertThat(answer.get(season).fieldNames())
                    .toIterable()
                    .contains(
                            "seasons",
                            "seasonsWithFrost",
                            "anyFrost",
                            "p50",
                            "p30",
                            "p10",
                            "p90",
                            "sdDays",
                            "latest",
                            "earliest");
        }
        assertThat(answer.get("evidence").asText()).isEqualTo("surface");
        assertThat(answer.at("/spring/p10").asText())
                .startsWith("2027-")
                .isGreaterThan(answer.at("/spring/p50").asText());
    }

    @Test
    void emerge_answers_for_a_crop_at_a_temperature() {
        JsonNode answer = answerTo("emerge", "pepper", "25");

        assertThat(answer.fieldNames())
                .toIterable()
                .contains(
                        "crop",
                        "emerges",
                        "days",
                        "days5",
                        "days95",
                        "normalShare",
                        "bestC",
                        "comfortableC",
                        "possibleC",
                        "source");
        // Harrington & Minges (1954), as reprinted in university material: pepper, 8 days at 25 °C.
        assertThat(answer.get("days").asDouble()).isCloseTo(8, within(0.05));
    }

    @Test
    void sow_answers_how_many_seeds() {
        JsonNode answer = answerTo("sow", "--want", "12", "--share", "0.8");

        assertThat(answer.fieldNames()).toIterable().contains("seeds", "cells", "probability", "share", "perCell");
        // Binomial tables: 17 seeds at 80 % give 12 or more in 89.4 % of tries, 18 seeds in 94.9 %.
        assertThat(answer.get("seeds").asInt()).isEqualTo(18);
        assertThat(answer.get("probability").asDouble()).isCloseTo(0.949, within(0.0005));
    }

    @Test
    void viability_answers_what_is_left_of_seed() {
        JsonNode answer =
                answerTo("viability", "--crop", "pepper", "--years", "1", "--moisture", "7", "--temperature", "20");

        assertThat(answer.fieldNames()).toIterable().contains("share", "halfLifeYears", "source");
        // Demir et al. 2009, worked by hand: one probit in 935.8 days, so 89.5 % after a year and half after 4.2 years.
        assertThat(answer.get("share").asDouble()).isCloseTo(0.895, within(0.0006));
        assertThat(answer.get("halfLifeYears").asDouble()).isCloseTo(4.21, within(0.01));
    }

    @Test
    void timeline_answers_with_every_step_and_its_reason() {
        JsonNode answer = answerTo(
                "timeline",
                "--crop",
                "pepper",
                "--last-frost",
                "2027-05-20",
                "--season",
                "2027",
                "--today",
                "2027-03-01");

        assertThat(answer.fieldNames())
                .toIterable()
                .contains("crop", "method", "verdict", "steps", "warmDays", "notes");
        assertThat(answer.get("verdict").asText()).isEqualTo("in time");
        assertThat(answer.get("steps")).isNotEmpty().allSatisfy(step -> {
            assertThat(step.fieldNames()).toIterable().contains("step", "earliest", "ideal", "latest", "why");
            assertThat(step.get("why").asText()).isNotBlank();
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "frost 5580x",
                "frost 55802 --colour red",
                "emerge peper 25",
                "emerge pepper warm",
                "sow --want -3 --share 0.8",
                "viability --crop pepper --years 1 --moisture 40 --temperature 20",
                "sow --want 12 --share 1.8",
                "sow --want 12 --share 0.8 --wrong",
                "timeline --crop pepper --last-frost 2027-02-30 --season 2027",
                "timeline --crop pepper --season 2027 --wrong",
                "serve --port 70000",
                "serve --wrong",
                "nonsense"
            })
    void what_cannot_be_used_ends_with_status_2_a_sentence_and_no_output(String words) {
        JarRun run = JarRun.of(words.split(" "));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).doesNotContain("Exception").matches("(?s).*[.]\\R");
    }

    private static JsonNode answerTo(String... words) {
        JarRun run = JarRun.of(words);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.json().isObject()).isTrue();
        return run.json();
    }
}
