package warmshelf.demo;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that the demo sets to the moments at which its people did things; it never runs past the real now. */
final class DemoClock extends Clock {
    private final Instant now;
    private final ZoneId zone;
    private Instant shown;

    DemoClock(Instant now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
        this.shown = now;
    }

    LocalDate today() {
        return LocalDate.ofInstant(now, zone);
    }

    /** Goes to a time of a past day; on today to the same share of the hours that have passed. */
    void goTo(LocalDate day, LocalTime time) {
        Instant start = day.atStartOfDay(zone).toInstant();
        if (day.isBefore(today())) {
            shown = day.atTime(time).atZone(zone).toInstant();
        } else {
            long passed = now.toEpochMilli() - start.toEpochMilli();
            shown = start.plusMillis((long) (passed * (time.toSecondOfDay() / 86_400.0)));
        }
    }

    /** A minute or so goes by. */
    void tick() {
        Instant later = shown.plusSeconds(75);
        shown = later.isBefore(now) ? later : now;
    }

    @Override
    public Instant instant() {
        return shown;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId other) {
        throw new UnsupportedOperationException("the demo's clock tells instants only");
    }
}
