package warmshelf.frost;

import java.time.LocalDate;
import java.time.Month;

/** Which season people plan for on a day. */
final class PlannedSeason {
    private PlannedSeason() {}

    /** The year of the spring that is next or going on; after 30 June the following year's. */
    static int after(LocalDate today) {
        return today.getMonth().compareTo(Month.JUNE) > 0 ? today.getYear() + 1 : today.getYear();
    }
}
