package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.Duration;
import java.time.Instant;

/**
 * How far a phone's clock is from the server's. A phone sends its own 'now' with what it kept; small differences are the way's
 * and the clock's usual ones.
 *
 * @param ahead of the server's clock; negative: the phone is behind
 * @param pretended how far the server's clock is itself ahead of the real one on purpose
 */
record ClockSkew(Duration ahead, Duration pretended) {
    /** Clocks that are no further apart are taken to agree. */
    static final Duration USUAL = Duration.ofMinutes(2);

    static ClockSkew between(Instant phone, Instant server, Duration pretended) {
        return new ClockSkew(Duration.between(server, phone), pretended);
    }

    boolean isUnusual() {
        return fault().abs().compareTo(USUAL) > 0;
    }

    /** How far the phone is from the real time. */
    private Duration fault() {
        return ahead.plus(pretended);
    }

    /** A moment by the phone's clock, as the server's would have had it. */
    Instant right(Instant byPhone) {
        return isUnusual() ? byPhone.minus(ahead) : byPhone.plus(pretended);
    }

    /** What to say of it beside an entry; empty where the clocks agree. */
    String remark() {
        if (!isUnusual()) {
            return "";
        }
        String span = span(fault().abs());
        return fault().isNegative() ? SAY.clockSlow(span) : SAY.clockFast(span);
    }

    private static String span(Duration span) {
        long minutes = (span.toSeconds() + 30) / 60;
        if (minutes < 120) {
            return SAY.minutes(minutes);
        }
        long hours = (minutes + 30) / 60;
        return hours < 48 ? SAY.hours(hours) : SAY.days((hours + 12) / 24);
    }
}
