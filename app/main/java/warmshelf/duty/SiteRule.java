package warmshelf.duty;

import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * How a site is looked after.
 *
 * @param doneBy the hour, in group time, by which a day's checks are done; null: none is set
 * @param together whether whoever looks here can look at another such site on the same day
 */
public record SiteRule(Named site, @Nullable LocalTime doneBy, boolean together) {
    /** What holds at a site for which nobody has said otherwise. */
    static final LocalTime USUAL_HOUR = LocalTime.of(18, 0);
}
