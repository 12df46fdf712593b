package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

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
        LocalDate first = form.date("first", SAY.firstDayField());
        LocalDate last = form.text("last").isEmpty() ? first : form.date("last", SAY.lastDayField());
        if (!form.ok()) {
            return Optional.empty();
        }
        if (first.isBefore(today) || first.isAfter(today.plusDays(MOST_DAYS_AHEAD))) {
            form.refuse("first", SAY.firstWithinTwoYears(first, today));
        } else if (last.isBefore(first)) {
            form.refuse("last", SAY.lastBeforeFirst(last, first));
        } else if (ChronoUnit.DAYS.between(first, last) >= MOST_DAYS) {
            form.refuse("last", SAY.lastTooFar(last, ChronoUnit.DAYS.between(first, last), MOST_DAYS));
        }
        return form.ok() ? Optional.of(new Span(first, last)) : Optional.empty();
    }
}
