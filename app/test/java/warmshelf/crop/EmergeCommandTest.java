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
    void an_unknown_crop_is_answered_with_the_crops_there_are() {
        CommandRun run = CommandRun.of("emerge", "peper", "25");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("'peper'").contains("pepper-very-hot");
    }
}
