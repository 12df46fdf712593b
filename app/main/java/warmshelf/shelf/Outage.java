package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.util.UUID;
import warmshelf.words.DayWords;

/**
 * Days on which a mat cannot be used.
 *
 * @param to the day after the last; where the mat is retired there is none
 * @param reason as a coordinator wrote it
 */
public record Outage(UUID id, UUID matId, LocalDate from, LocalDate to, String reason) {

    /** Of what is retired: it has no last day. */
    static final LocalDate FOR_GOOD = LocalDate.of(9999, 12, 31);

    public boolean isForGood() {
        return to.equals(FOR_GOOD);
    }

    public LocalDate lastDay() {
        return to.minusDays(1);
    }

    public boolean covers(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(to);
    }

    /** Whether any of the days up to but not on {@code afterLast} is among them. */
    public boolean touches(LocalDate first, LocalDate afterLast) {
        return from.isBefore(afterLast) && to.isAfter(first);
    }

    /** For example 'out of service to Sat 5 Dec'. */
    public String words() {
        return isForGood() ? SAY.retired() : SAY.outOfServiceTo(DayWords.day(lastDay()));
    }
}
