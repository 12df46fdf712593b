package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;
import warmshelf.words.DayWords;

/**
 * A rack that is held because something was found there that spreads, such as pests or virus.
 *
 * @param rack its name
 * @param since the day of the first note that still holds it
 */
public record RackHold(UUID rackId, String rack, LocalDate since) {
    /** For example 'Tue 4 May'. */
    public String sinceWords() {
        return DayWords.day(since);
    }
}
