package warmshelf.duty;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A site at which something is still to do after its hour.
 *
 * @param open how many things
 */
public record LateRound(SiteWatch watch, long open) {

    /**
     * The sites that are late.
     *
     * @param now the time of day in the group's zone
     * @param openAt how many things are still to do, by site
     */
    static List<LateRound> at(LocalTime now, List<SiteWatch> sites, Map<UUID, Long> openAt) {
        return sites.stream()
                .filter(watch -> watch.isPast(now))
                .map(watch ->
                        new LateRound(watch, openAt.getOrDefault(watch.site().id(), 0L)))
                .filter(late -> late.open() > 0)
                .toList();
    }

    boolean standsIn(UUID member) {
        return watch.standsIn(member);
    }

    /** For the one who stands in. */
    public String standInWords() {
        Named onDuty = watch.onDuty();
        return "You stand in today at %s: %s has not looked by %s."
                .formatted(watch.site().name(), onDuty == null ? "nobody" : onDuty.name(), watch.doneBy());
    }

    /** For a coordinator. */
    public String words() {
        return "%s: the round was not done by %s, %s. %s"
                .formatted(
                        watch.site().name(),
                        watch.doneBy(),
                        open == 1 ? "one thing is still to do" : open + " things are still to do",
                        people(watch.onDuty(), watch.standIn()));
    }

    private static String people(@Nullable Named onDuty, @Nullable Named standIn) {
        String down = onDuty == null ? "Nobody was down to look" : onDuty.name() + " is on duty";
        return standIn == null ? down + " and nobody stands in." : "%s, %s stands in.".formatted(down, standIn.name());
    }
}
