package warmshelf.backup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.IsoFields;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Which backups are kept: the newest of each of the last 7 days, 4 weeks and 12 months that have one. Counting only days that have
 * one, a machine that was off for a month loses none of its older ones by it. Common practice (son, father, grandfather).
 */
final class KeepRule {
    static final int DAYS = 7;
    static final int WEEKS = 4;
    static final int MONTHS = 12;

    private KeepRule() {}

    /**
     * Those that are kept.
     *
     * @param zone the group's, in which days begin
     */
    static Set<Instant> kept(Collection<Instant> made, ZoneId zone) {
        List<Instant> newestFirst =
                made.stream().sorted(Comparator.reverseOrder()).toList();
        Set<Instant> kept = new TreeSet<>();
        kept.addAll(newestOfEach(newestFirst, DAYS, at -> day(at, zone)));
        kept.addAll(newestOfEach(newestFirst, WEEKS, at -> week(day(at, zone))));
        kept.addAll(newestOfEach(newestFirst, MONTHS, at -> YearMonth.from(day(at, zone))));
        return kept;
    }

    private static List<Instant> newestOfEach(List<Instant> newestFirst, int most, Function<Instant, Object> span) {
        Set<Object> spans = new LinkedHashSet<>();
        return newestFirst.stream()
                .filter(at -> spans.size() < most && spans.add(span.apply(at)))
                .toList();
    }

    private static LocalDate day(Instant at, ZoneId zone) {
        return LocalDate.ofInstant(at, zone);
    }

    /** Weeks from Monday to Sunday, named by year and number (ISO 8601). */
    private static String week(LocalDate day) {
        return day.get(IsoFields.WEEK_BASED_YEAR) + "-" + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }
}
