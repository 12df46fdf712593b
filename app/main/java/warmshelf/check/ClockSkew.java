package warmshelf.check;

import java.time.Duration;
import java.time.Instant;

/**
 * How far a phone's clock is from the server's. A phone sends its own 'now' with what it kept; small differences are the way's
 * and the clock's usual ones.
 *
 * @param ahead negative: the phone is behind
 */
record ClockSkew(Duration ahead) {
    /** Clocks that are no further apart are taken to agree. */
    static final Duration USUAL = Duration.ofMinutes(2);

    static ClockSkew between(Instant phone, Instant server) {
        return new ClockSkew(Duration.between(server, phone));
    }

    boolean isUnusual() {
        return ahead.abs().compareTo(USUAL) > 0;
    }

    /** A moment by the phone's clock, as the server's would have had it. */
    Instant right(Instant byPhone) {
        return isUnusual() ? byPhone.minus(ahead) : byPhone;
    }

    /** What to say of it beside an entry; empty where the clocks agree. */
    String remark() {
        return isUnusual()
                ? "(The phone's clock was %s %s; the time was put right.)"
                        .formatted(span(ahead.abs()), ahead.isNegative() ? "slow" : "fast")
                : "";
    }

    private static String span(Duration span) {
        long minutes = (span.toSeconds() + 30) / 60;
        if (minutes < 120) {
            return minutes + " minutes";
        }
        long hours = (minutes + 30) / 60;
        return hours < 48 ? hours + " hours" : (hours + 12) / 24 + " days";
    }
}
