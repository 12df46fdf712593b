package warmshelf.duty;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The weekdays at each site that somebody ticks. */
public final class WillingForm {
    private WillingForm() {}

    /** A site with a tick for each weekday. */
    public record SiteLine(String site, List<DayTick> ticks) {}

    /** One weekday, for example 'Thursday', and whether it is ticked. */
    public record DayTick(String value, String words, boolean ticked) {}

    static List<SiteLine> lines(List<Named> sites, Set<SiteWeekday> can) {
        return sites.stream()
                .map(site -> new SiteLine(
                        site.name(),
                        Arrays.stream(DayOfWeek.values())
                                .map(weekday -> new SiteWeekday(site.id(), weekday))
                                .map(each -> new DayTick(
                                        each.words(),
                                        each.weekday().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                                        can.contains(each)))
                                .toList()))
                .toList();
    }

    /** What was ticked; empty when something is no weekday at a site of the group. */
    static Optional<Set<SiteWeekday>> read(List<String> ticked, List<Named> sites) {
        Set<SiteWeekday> read = new HashSet<>();
        var known = sites.stream()
                .flatMap(site -> Arrays.stream(DayOfWeek.values()).map(day -> new SiteWeekday(site.id(), day)))
                .collect(Collectors.toMap(SiteWeekday::words, each -> each));
        for (String words : ticked) {
            SiteWeekday each = known.get(words);
            if (each == null) {
                return Optional.empty();
            }
            read.add(each);
        }
        return Optional.of(read);
    }
}
