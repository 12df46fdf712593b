package warmshelf.finding.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/**
 * How much of the group's space one week used.
 *
 * @param monday its first day
 * @param onMats quarters of places on mats that held something, summed over its days
 * @param ofMats quarters that there were, summed over its days
 * @param underLight the same for places under light
 * @param ofLight the same
 * @param wattHours what mats with something on them drew at most, as if they heated all day, and lamps over something
 */
public record SpaceWeek(LocalDate monday, int onMats, int ofMats, int underLight, int ofLight, long wattHours) {
    private static final int DAYS = 7;

    /**
     * A mat or lit shelf as it stands today: nobody kept how many places there were on an earlier day.
     *
     * @param quarters of all its places
     * @param wattHoursADay at most, on a day on which something lies there; 0 for lamps of which nobody said how long they burn
     */
    public record Space(UUID id, boolean isMat, int quarters, int wattHoursADay) {}

    /** What a mat or lit shelf held on a day. */
    public record Used(UUID spaceId, LocalDate day, int quarters) {}

    /** Every week from the first with anything in it to the last. */
    static List<SpaceWeek> of(List<Space> spaces, List<Used> used) {
        Map<UUID, Space> byId = new TreeMap<>();
        spaces.forEach(space -> byId.put(space.id(), space));
        int ofMats = quarters(spaces, true) * DAYS;
        int ofLight = quarters(spaces, false) * DAYS;
        SortedMap<LocalDate, SpaceWeek> weeks = new TreeMap<>();
        for (Used each : used) {
            Space space = byId.get(each.spaceId());
            if (space != null) {
                LocalDate monday = each.day().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
                weeks.merge(monday, one(monday, space, each.quarters(), ofMats, ofLight), SpaceWeek::and);
            }
        }
        return withEmptyWeeks(weeks, ofMats, ofLight);
    }

    private static int quarters(List<Space> spaces, boolean mats) {
        return spaces.stream()
                .filter(space -> space.isMat() == mats)
                .mapToInt(Space::quarters)
                .sum();
    }

    private static SpaceWeek one(LocalDate monday, Space space, int quarters, int ofMats, int ofLight) {
        return space.isMat()
                ? new SpaceWeek(monday, quarters, ofMats, 0, ofLight, space.wattHoursADay())
                : new SpaceWeek(monday, 0, ofMats, quarters, ofLight, space.wattHoursADay());
    }

    private SpaceWeek and(SpaceWeek more) {
        return new SpaceWeek(
                monday,
                onMats + more.onMats,
                ofMats,
                underLight + more.underLight,
                ofLight,
                wattHours + more.wattHours);
    }

    private static List<SpaceWeek> withEmptyWeeks(SortedMap<LocalDate, SpaceWeek> weeks, int ofMats, int ofLight) {
        List<SpaceWeek> all = new ArrayList<>();
        if (!weeks.isEmpty()) {
            for (LocalDate monday = weeks.firstKey();
                    !monday.isAfter(weeks.lastKey());
                    monday = monday.plusDays(DAYS)) {
                all.add(weeks.getOrDefault(monday, new SpaceWeek(monday, 0, ofMats, 0, ofLight, 0)));
            }
        }
        return all;
    }

    /** The share of the mats' space that was used, 0 to 1; 0 where there are no mats. */
    public double matShare() {
        return ofMats == 0 ? 0 : (double) onMats / ofMats;
    }

    /** The share of the lit space that was used. */
    public double lightShare() {
        return ofLight == 0 ? 0 : (double) underLight / ofLight;
    }
}
