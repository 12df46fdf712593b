package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
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
        ClockSkew skew = ClockSkew.between(phoneNow, SERVER);

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
        assertThat(ClockSkew.between(phoneNow, SERVER).remark()).isEqualTo(words);
    }
}
