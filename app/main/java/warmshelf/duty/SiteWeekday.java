package warmshelf.duty;

import java.time.DayOfWeek;
import java.util.UUID;

/** A weekday at a site. */
public record SiteWeekday(UUID site, DayOfWeek weekday) {
    /** As a form sends it, for example '1f0c…/4' for Thursdays. */
    public String words() {
        return site + "/" + weekday.getValue();
    }
}
