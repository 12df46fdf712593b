package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
        return onDuty == null
                ? SAY.youStandInForNobody(watch.site().name(), hour())
                : SAY.youStandIn(watch.site().name(), onDuty.name(), hour());
    }

    /** For a coordinator. */
    public String words() {
        return SAY.roundLate(watch.site().name(), hour(), open, people(watch.onDuty(), watch.standIn()));
    }

    /** A site without an hour is never late. */
    private LocalTime hour() {
        return Objects.requireNonNull(watch.doneBy());
    }

    private static String people(@Nullable Named onDuty, @Nullable Named standIn) {
        if (onDuty == null) {
            return standIn == null ? SAY.nobodyDown() : SAY.nobodyDownStandsIn(standIn.name());
        }
        return standIn == null ? SAY.nobodyStandsIn(onDuty.name()) : SAY.standsIn(onDuty.name(), standIn.name());
    }
}
