package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.CommandRun;

class ViabilityCommandTest {
    // Demir et al. 2009, worked in seed-ageing.md: 7 % and 20 °C, 95 % at the start: 89.5 % after 365 days, half after
    // 4.2 years.
    @Test
    void it_answers_with_the_worked_example_and_its_source() {
        JsonNode answer = viability("--crop pepper --years 1 --moisture 7 --temperature 20")
                .json();

        assertThat(answer.get("share").asDouble()).isCloseTo(0.895, within(0.0006));
        assertThat(answer.get("halfLifeYears").asDouble()).isCloseTo(4.21, within(0.01));
        assertThat(answer.get("source").asText()).contains("Demir et al. 2009");
        assertThat(answer.get("low").asDouble()).isLessThan(answer.get("share").asDouble());
        assertThat(answer.get("high").asDouble())
                .isGreaterThan(answer.get("share").asDouble());
    }

    @Test
    void a_crop_without_published_constants_is_answered_by_its_half_life_and_says_so() {
        JsonNode answer = viability("--crop tomato --years 4 --moisture 7 --temperature 18 --initial 0.875")
                .json();

        assertThat(answer.get("share").asDouble()).isBetween(0.75, 0.87);
        assertThat(answer.get("low").asDouble()).isLessThan(0.7);
        assertThat(answer.get("method").asText()).isEqualTo("half-life by kind");
        assertThat(answer.get("source").asText())
                .contains("no published constants")
                .contains("from memory");
    }

    // Nagel and Börner 2009: lettuce was half dead after 7 years at 20.3 °C and 50.5 % humidity; chives after 5.
    @ParameterizedTest
    @CsvSource({"lettuce, 7", "chives, 5", "snap-bean, 21"})
    void in_a_room_the_half_life_is_near_what_was_found(String crop, double years) {
        JsonNode answer = viability("--crop %s --years 1 --moisture 7.5 --temperature 20.3".formatted(crop))
                .json();

        assertThat(answer.get("halfLifeYears").asDouble()).isBetween(years / 1.5, years * 1.5);
    }

    @Test
    void a_freezer_is_within_the_range() {
        assertThat(viability("--crop beet --years 10 --moisture 6 --temperature -18")
                        .json()
                        .get("share")
                        .asDouble())
                .isGreaterThan(0.9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--crop pepper --years 1 --moisture 40 --temperature 20 | --moisture was '40'; a number from 5 to 25",
                "--crop pepper --years 1 --moisture 7 --temperature 60 | --temperature was '60'; a number from -20 to 50",
                "--crop pepper --years -1 --moisture 7 --temperature 20 | --years was '-1'",
                "--crop pepper --years 1 --moisture 7 --temperature 20 --initial 1 | --initial was '1'",
                "--crop peper --years 1 --moisture 7 --temperature 20 | There is no crop 'peper'",
                "--crop pepper --years 1 --moisture 7 | Missing required option"
            })
    void bad_input_is_answered_with_a_sentence_and_status_2(String arguments, String sentence) {
        CommandRun run = viability(arguments);

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(sentence);
        assertThat(run.out()).isEmpty();
    }

    private static CommandRun viability(String arguments) {
        return CommandRun.of(("viability " + arguments).split(" "));
    }
}
