package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.testing.CommandRun;

class EmergeCommandTest {
    @Test
    void it_prints_the_documented_fields() {
        JsonNode answer = CommandRun.of("emerge", "pepper", "25").json();

        assertThat(answer.fieldNames())
                .toIterable()
                .startsWith(
                        "crop",
                        "temperatureC",
                        "emerges",
                        "days",
                        "days5",
                        "days95",
                        "normalShare",
                        "bestC",
                        "comfortableC",
                        "possibleC",
                        "source");
        assertThat(answer.get("days").asDouble()).isEqualTo(8.0);
        assertThat(answer.get("normalShare").asDouble()).isEqualTo(0.98);
        assertThat(answer.get("possibleC")).extracting(JsonNode::asDouble).containsExactly(15.0, 35.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-5", "14.9", "40"})
    void outside_the_tested_range_nothing_emerges_and_days_are_null(String celsius) {
        JsonNode answer = CommandRun.of("emerge", "pepper", celsius).json();

        assertThat(answer.get("emerges").asBoolean()).isFalse();
        assertThat(answer.get("days").isNull()).isTrue();
        assertThat(answer.get("normalShare").isNull()).isTrue();
    }

    @Test
    void celery_at_22_degrees_comes_up_by_the_published_range_and_it_is_said() {
        JsonNode answer = CommandRun.of("emerge", "celery", "22").json();

        assertThat(answer.get("emerges").asBoolean()).isTrue();
        assertThat(answer.get("days").asDouble()).isEqualTo(7);
        assertThat(answer.get("basis").asText()).isEqualTo("published range");
        assertThat(answer.get("note").asText()).contains("Not timed at this temperature");
    }

    @Test
    void what_was_not_tested_is_told_from_what_did_not_grow() {
        JsonNode celery = CommandRun.of("emerge", "celery", "30").json();
        JsonNode eggplant = CommandRun.of("emerge", "eggplant", "40").json();
        JsonNode watermelon = CommandRun.of("emerge", "watermelon", "16").json();

        assertThat(celery.get("emerges").asBoolean()).isFalse();
        assertThat(celery.get("basis").asText()).isEqualTo("nothing grew");
        assertThat(eggplant.get("emerges").asBoolean()).isFalse();
        assertThat(eggplant.get("basis").asText()).isEqualTo("not tested");
        assertThat(watermelon.get("emerges").asBoolean()).isTrue();
        assertThat(watermelon.get("days").isNull()).isTrue();
        assertThat(watermelon.get("basis").asText()).isEqualTo("days not published");
    }

    @Test
    void an_unknown_crop_is_answered_with_the_crops_there_are() {
        CommandRun run = CommandRun.of("emerge", "peper", "25");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("'peper'").contains("pepper-very-hot");
    }
}
