package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClockSkewTest {
    private static final Instant SERVER = Instant.parse("2027-03-01T15:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "2027-03-01T15:00:00Z, 2027-03-01T14:00:00Z",
        "2027-03-01T15:02:00Z, 2027-03-01T14:00:00Z",
        "2027-03-01T14:58:00Z, 2027-03-01T14:00:00Z",
        "2027-03-01T15:02:01Z, 2027-03-01T13:57:59Z",
        "2027-03-01T14:13:00Z, 2027-03-01T14:47:00Z",
        "2026-03-01T15:00:00Z, 2028-02-29T14:00:00Z"
    })
    void what_a_phone_saw_is_shifted_by_as_much_as_its_clock_is_off_from_two_minutes_on(
            Instant phoneNow, Instant righted) {
        ClockSkew skew = ClockSkew.between(phoneNow, SERVER, Duration.ZERO);

        assertThat(skew.right(Instant.parse("2027-03-01T14:00:00Z"))).isEqualTo(righted);
    }

    @ParameterizedTest
    @CsvSource({
        "2027-03-01T15:01:59Z, ''",
        "2027-03-01T15:47:20Z, (The phone's clock was 47 minutes fast; the time was put right.)",
        "2027-03-01T10:00:00Z, (The phone's clock was 5 hours slow; the time was put right.)",
        "2027-03-11T15:00:00Z, (The phone's clock was 10 days fast; the time was put right.)"
    })
    void it_is_said_how_far_the_clock_was_off(Instant phoneNow, String words) {
        assertThat(ClockSkew.between(phoneNow, SERVER, Duration.ZERO).remark()).isEqualTo(words);
    }

    @Test
    void a_server_that_pretends_another_day_puts_the_day_right_and_blames_no_phone_for_it() {
        Duration pretended = Duration.ofDays(-206);
        Instant real = SERVER.minus(pretended);

        ClockSkew right = ClockSkew.between(real, SERVER, pretended);
        assertThat(right.right(real.minusSeconds(90))).isEqualTo(SERVER.minusSeconds(90));
        assertThat(right.remark()).isEmpty();

        ClockSkew slow = ClockSkew.between(real.minus(Duration.ofHours(3)), SERVER, pretended);
        assertThat(slow.right(real.minus(Duration.ofHours(3)))).isEqualTo(SERVER);
        assertThat(slow.remark()).contains("3 hours slow");
    }
}
