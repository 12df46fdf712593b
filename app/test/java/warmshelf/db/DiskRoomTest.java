package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiskRoomTest {
    private final AtomicLong free = new AtomicLong(10_000_000_000L);
    private final AtomicLong nanos = new AtomicLong(-5);
    private final DiskRoom room = new DiskRoom(free::get, nanos::get);

    @ParameterizedTest(name = "{1} to {2} in {0}, {3} kept: {4} days")
    @CsvSource({
        "P2D, 1000, 800, 100, 7",
        "P2D, 1000, 800, 900, 0",
        "PT12H, 1000, 900, 0, 4",
        "PT6H, 1000, 999, 0, 249",
        // too short to tell, not filling, emptied
        "PT5H59M, 1000, 10, 0, -1",
        "P7D, 1000, 1000, 0, -1",
        "P7D, 1000, 2000, 0, -1"
    })
    void days_left_follow_the_rate_of_the_days_before(Duration span, long before, long now, long kept, long days) {
        assertThat(DiskForecast.daysLeft(span, before, now, kept).orElse(-1)).isEqualTo(days);
    }

    @Test
    void it_is_low_before_it_is_full_and_full_before_it_is_exhausted() {
        room.keepFree(1_000_000);
        assertState(3_000_000, DiskRoom.State.ROOMY, false);
        assertState(2_999_999, DiskRoom.State.LOW, false);
        assertState(1_000_000, DiskRoom.State.LOW, false);
        assertState(999_999, DiskRoom.State.FULL, false);
        assertState(500_000, DiskRoom.State.FULL, false);
        assertState(499_999, DiskRoom.State.FULL, true);
        assertState(3_000_000, DiskRoom.State.ROOMY, false);
    }

    private void assertState(long left, DiskRoom.State state, boolean exhausted) {
        nanos.addAndGet(Duration.ofSeconds(1).toNanos());
        free.set(left);
        assertThat(room.state()).as("%d left", left).isEqualTo(state);
        assertThat(room.isExhausted()).isEqualTo(exhausted);
    }

    @Test
    void a_disk_that_fills_is_low_two_weeks_before() {
        room.keepFree(1_000_000_000);
        for (int hour = 1; hour <= 48; hour++) {
            nanos.addAndGet(Duration.ofHours(1).toNanos());
            free.addAndGet(-20_000_000);
            assertThat(room.free()).isEqualTo(free.get());
        }
        assertThat(room.daysLeft()).isEqualTo(OptionalLong.of(16)); // 8.04 GB at 0.48 a day
        assertThat(room.state()).isEqualTo(DiskRoom.State.ROOMY);

        for (int hour = 1; hour <= 48; hour++) {
            nanos.addAndGet(Duration.ofHours(1).toNanos());
            free.addAndGet(-40_000_000);
            assertThat(room.free()).isEqualTo(free.get());
        }
        assertThat(room.daysLeft()).isEqualTo(OptionalLong.of(8)); // 6.12 GB at 0.72 a day
        assertThat(room.state()).isEqualTo(DiskRoom.State.LOW);
    }

    @Test
    void the_disk_is_asked_a_few_times_a_second_at_most() {
        assertThat(room.free()).isEqualTo(10_000_000_000L);
        free.set(7);
        nanos.addAndGet(Duration.ofMillis(199).toNanos());
        assertThat(room.free()).isEqualTo(10_000_000_000L);
        nanos.addAndGet(Duration.ofMillis(1).toNanos());
        assertThat(room.free()).isEqualTo(7);
    }
}
