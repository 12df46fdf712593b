package warmshelf.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock by which months go by while one waits. */
final class QuickClock extends Clock {
    private final Instant from;
    private final long began = System.nanoTime();
    private final double factor;

    /** @param whole the time of the group that goes by in the time given */
    QuickClock(Instant from, Duration whole, Duration in) {
        this.from = from;
        this.factor = (double) whole.toMillis() / in.toMillis();
    }

    @Override
    public Instant instant() {
        return from.plusMillis((long) ((System.nanoTime() - began) / 1e6 * factor));
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        Clock quick = this;
        return new Clock() {
            @Override
            public Instant instant() {
                return quick.instant();
            }

            @Override
            public ZoneId getZone() {
                return zone;
            }

            @Override
            public Clock withZone(ZoneId other) {
                return quick.withZone(other);
            }
        };
    }
}
