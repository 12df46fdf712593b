package warmshelf.reminder.push;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import org.jspecify.annotations.Nullable;

/**
 * What became of a notice at the push service (RFC 8030, sections 5 and 7.3).
 *
 * @param pause how long the service asks to be left alone; nought when it does not say
 * @param why for the log
 */
record PushAnswer(Kind kind, Duration pause, String why) {
    enum Kind {
        TAKEN,
        /** The device's address has ended. */
        GONE,
        /** It will never be taken as it is. */
        REFUSED,
        LATER
    }

    static PushAnswer later(String why) {
        return new PushAnswer(Kind.LATER, Duration.ZERO, why);
    }

    static PushAnswer refused(String why) {
        return new PushAnswer(Kind.REFUSED, Duration.ZERO, why);
    }

    static PushAnswer of(int status, @Nullable String retryAfter, Instant now) {
        String why = "status " + status;
        if (status >= 200 && status < 300) {
            return new PushAnswer(Kind.TAKEN, Duration.ZERO, why);
        }
        if (status == 404 || status == 410) {
            return new PushAnswer(Kind.GONE, Duration.ZERO, why);
        }
        if (status == 429 || status >= 500) {
            return new PushAnswer(Kind.LATER, wait(retryAfter, now), why);
        }
        return refused(
                status == 401 || status == 403
                        ? why
                                + ": the push keys or the contact are not accepted; devices are bound to the keys they were added with"
                        : why);
    }

    /** Seconds or a date (RFC 9110, section 10.2.3). */
    private static Duration wait(@Nullable String retryAfter, Instant now) {
        if (retryAfter == null) {
            return Duration.ZERO;
        }
        String text = retryAfter.strip();
        if (text.matches("\\d{1,9}")) {
            return Duration.ofSeconds(Long.parseLong(text));
        }
        try {
            Duration until = Duration.between(
                    now,
                    ZonedDateTime.parse(text, DateTimeFormatter.RFC_1123_DATE_TIME)
                            .toInstant());
            return until.isNegative() ? Duration.ZERO : until;
        } catch (DateTimeException notADate) {
            return Duration.ZERO;
        }
    }
}
