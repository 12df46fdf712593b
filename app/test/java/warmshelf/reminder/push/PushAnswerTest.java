package warmshelf.reminder.push;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers by RFC 8030, sections 5 and 7.3, and RFC 9110, section 10.2.3 (Retry-After). */
class PushAnswerTest {
    private static final Instant NOW = Instant.parse("2027-03-01T15:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "200, TAKEN",
        "201, TAKEN",
        "202, TAKEN",
        "307, REFUSED",
        "400, REFUSED",
        "403, REFUSED",
        "404, GONE",
        "410, GONE",
        "413, REFUSED",
        "429, LATER",
        "500, LATER",
        "503, LATER"
    })
    void each_status_has_its_meaning(int status, PushAnswer.Kind kind) {
        assertThat(PushAnswer.of(status, null, NOW).kind()).isEqualTo(kind);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "120 | 120",
                "Mon, 1 Mar 2027 15:05:00 GMT | 300",
                "Mon, 1 Mar 2027 14:00:00 GMT | 0",
                "soon | 0",
                "-5 | 0",
                "99999999999999 | 0"
            })
    void the_wait_is_what_the_service_asks_for_and_nonsense_asks_for_none(String retryAfter, long seconds) {
        assertThat(PushAnswer.of(503, retryAfter, NOW).pause()).isEqualTo(Duration.ofSeconds(seconds));
    }

    @Test
    void keys_that_are_not_accepted_are_said_so_in_the_log() {
        assertThat(PushAnswer.of(403, null, NOW).why()).contains("push keys");
    }
}
