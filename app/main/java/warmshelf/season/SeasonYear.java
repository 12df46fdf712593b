package warmshelf.season;

import java.time.LocalDate;
import java.time.Month;

/** Which season follows one that was closed. A season is named by the year in which its tender plants go out. */
final class SeasonYear {
    // In the north, plants are out by midsummer and from July on the next ones are those of next spring. In the south
    // they go out
    // from October to December, so that all of a year looks to its own spring.
    private static final Month NORTH_LOOKS_AHEAD_FROM = Month.JULY;

    private SeasonYear() {}

    /** The season that a group works towards on a day, where nothing else is known. */
    static int workedTowards(LocalDate today, boolean south) {
        boolean ahead = !south && today.getMonth().compareTo(NORTH_LOOKS_AHEAD_FROM) >= 0;
        return today.getYear() + (ahead ? 1 : 0);
    }

    /** The season to open after one was closed: the one worked towards by then, and never one before it or the same again. */
    static int after(int closed, LocalDate today, boolean south) {
        return Math.max(closed + 1, workedTowards(today, south));
    }
}
