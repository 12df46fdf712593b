package warmshelf.duty;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import warmshelf.words.FormReader;

/** Days on which somebody cannot look, as typed. */
final class AwayForm {
    private static final int MOST_DAYS = 366;
    private static final int MOST_DAYS_AHEAD = 730;

    private AwayForm() {}

    /** The first and the last day. */
    record Span(LocalDate first, LocalDate last) {}

    static Optional<Span> read(FormReader form, LocalDate today) {
        LocalDate first = form.date("first", "The first day");
        LocalDate last = form.text("last").isEmpty() ? first : form.date("last", "The last day");
        if (!form.ok()) {
            return Optional.empty();
        }
        if (first.isBefore(today) || first.isAfter(today.plusDays(MOST_DAYS_AHEAD))) {
            form.refuse(
                    "first",
                    "The first day was '%s'; a date from today, %s, to two years ahead is accepted."
                            .formatted(first, today));
        } else if (last.isBefore(first)) {
            form.refuse(
                    "last",
                    "The last day was '%s', before the first, '%s'; the same day or a later one is accepted."
                            .formatted(last, first));
        } else if (ChronoUnit.DAYS.between(first, last) >= MOST_DAYS) {
            form.refuse(
                    "last",
                    "The last day was '%s', %,d days after the first; at most %d days at once are accepted."
                            .formatted(last, ChronoUnit.DAYS.between(first, last), MOST_DAYS));
        }
        return form.ok() ? Optional.of(new Span(first, last)) : Optional.empty();
    }
}
