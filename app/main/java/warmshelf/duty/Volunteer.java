package warmshelf.duty;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * A member who has said where and when they can look.
 *
 * @param weekdays the weekdays on which they can, by site
 * @param away days on which they cannot all the same
 */
public record Volunteer(UUID id, String name, Map<UUID, Set<DayOfWeek>> weekdays, List<Away> away) {
    /** Whether they have said that they can look at that site on that day. */
    boolean can(Turn turn) {
        return weekdays.getOrDefault(turn.site(), Set.of()).contains(turn.day().getDayOfWeek())
                && away.stream().noneMatch(days -> days.covers(turn.day()));
    }
}
