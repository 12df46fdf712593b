package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.util.UUID;
import warmshelf.words.DayWords;

/**
 * Days on which a mat cannot be used.
 *
 * @param to the day after the last
 * @param reason as a coordinator wrote it
 */
public record Outage(UUID id, UUID matId, LocalDate from, LocalDate to, String reason) {

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
        return SAY.outOfServiceTo(DayWords.day(lastDay()));
    }
}
