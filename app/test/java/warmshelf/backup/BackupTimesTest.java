package warmshelf.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In the United States clocks went from 2:00 to 3:00 on 14 March 2027 and back on 7 November (15 U.S.C. 260a). */
class BackupTimesTest {
    private static final ZoneId DULUTH = ZoneId.of("America/Chicago");

    @ParameterizedTest(name = "newest {0}, at {1}, now {2}: {3}")
    @CsvSource({
        // at 03:00 in winter, which is 09:00 UTC
        "2027-03-01T09:00:00Z, 03:00, 2027-03-02T08:59:59Z, false",
        "2027-03-01T09:00:00Z, 03:00, 2027-03-02T09:00:00Z, true",
        "2027-03-02T09:00:10Z, 03:00, 2027-03-02T23:00:00Z, false",
        // a laptop that was asleep at the time makes it when it wakes
        "2027-03-01T09:00:00Z, 03:00, 2027-03-04T17:00:00Z, true",
        // one made by hand in the evening does not stand for the night's
        "2027-03-02T02:00:00Z, 03:00, 2027-03-02T09:00:00Z, true",
        // 02:30 is left out in that night; the hour after stands for it
        "2027-03-13T08:30:00Z, 02:30, 2027-03-14T08:29:00Z, false",
        "2027-03-13T08:30:00Z, 02:30, 2027-03-14T08:30:00Z, true",
        // 01:30 comes twice; once is enough
        "2027-11-07T06:30:00Z, 01:30, 2027-11-07T07:45:00Z, false",
    })
    void one_is_due_once_its_time_of_day_has_passed(Instant newest, LocalTime at, Instant now, boolean due) {
        assertThat(BackupTimes.isDue(Optional.of(newest), at, now, DULUTH)).isEqualTo(due);
    }

    @Test
    void the_first_is_due_at_once() {
        assertThat(BackupTimes.isDue(Optional.empty(), LocalTime.of(3, 0), Instant.EPOCH, DULUTH))
                .isTrue();
    }
}
