package warmshelf.testing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until a test moves it. */
public final class MutableClock extends Clock {
    private volatile Instant now;

    public MutableClock(Instant now) {
        this.now = now;
    }

    public void advance(Duration by) {
        now = now.plus(by);
    }

    public void set(Instant to) {
        now = to;
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        // Moving this one must move the other too.
        return new Clock() {
            @Override
            public ZoneId getZone() {
                return zone;
            }

            @Override
            public Clock withZone(ZoneId other) {
                return MutableClock.this.withZone(other);
            }

            @Override
            public Instant instant() {
                return MutableClock.this.instant();
            }
        };
    }
}
