package warmshelf.frost.minima;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the last frost before midsummer and the first after it, year by year. A season is left out when ten or more days
 * are missing where they could change its date: between its frost and the most extreme frost of that side on record; in a
 * season without frost, anywhere between the earliest autumn and the latest spring frost on record.
 */
final class FrostSeasons {
    private static final int TOO_MANY_MISSING = 10;
    /** A season of which the five months next to midsummer have no reading at all is not part of the record. */
    private static final int HEART_MONTHS = 5;

    private final DailyMinima minima;
    private final Hemisphere hemisphere;
    private final double thresholdC;
    private final List<SeasonFrost> springs = new ArrayList<>();
    private final List<SeasonFrost> autumns = new ArrayList<>();

    FrostSeasons(DailyMinima minima, Hemisphere hemisphere, double thresholdC) {
        this.minima = minima;
        this.hemisphere = hemisphere;
        this.thresholdC = thresholdC;
        for (int year = minima.years().first() - 1; year <= minima.years().last() + 1; year++) {
            look(year);
        }
    }

    private void look(int year) {
        LocalDate spring = hemisphere.springFrom(year);
        LocalDate midsummer = hemisphere.autumnFrom(year);
        LocalDate nextMidsummer = midsummer.plusYears(1);
        if (hasReading(midsummer.minusMonths(HEART_MONTHS), midsummer)) {
            springs.add(new SeasonFrost(year, frost(midsummer.minusDays(1), spring, -1)));
        }
        if (hasReading(midsummer, midsummer.plusMonths(HEART_MONTHS))) {
            autumns.add(new SeasonFrost(year, frost(midsummer, nextMidsummer.minusDays(1), 1)));
        }
    }

    private boolean hasReading(LocalDate from, LocalDate before) {
        for (LocalDate day = from; day.isBefore(before); day = day.plusDays(1)) {
            if (minima.isKnown(day)) {
                return true;
            }
        }
        return false;
    }

    private @Nullable LocalDate frost(LocalDate from, LocalDate to, int step) {
        for (LocalDate day = from; !day.equals(to.plusDays(step)); day = day.plusDays(step)) {
            if (minima.isFrost(day, thresholdC)) {
                return day;
            }
        }
        return null;
    }

    FrostSide springs() {
        return side(springs, true);
    }

    FrostSide autumns() {
        return side(autumns, false);
    }

    private FrostSide side(List<SeasonFrost> seasons, boolean spring) {
        List<SeasonFrost> kept = seasons.stream()
                .filter(season -> missingWhereItMatters(season, spring) < TOO_MANY_MISSING)
                .toList();
        return new FrostSide(spring, kept, seasons.size() - kept.size());
    }

    private int missingWhereItMatters(SeasonFrost season, boolean spring) {
        LocalDate frost = season.day();
        LocalDate from = spring ? hemisphere.springFrom(season.year()) : hemisphere.autumnFrom(season.year());
        if (frost == null) {
            return missingInWinter(from);
        }
        return spring
                ? minima.missing(frost.plusDays(1), sameDay(extreme(springs, true), from))
                : minima.missing(sameDay(extreme(autumns, false), from), frost.minusDays(1));
    }

    private int missingInWinter(LocalDate from) {
        LocalDate earliest = extreme(autumns, false);
        LocalDate latest = extreme(springs, true);
        LocalDate coldest = hemisphere.coldestFrom(from);
        return minima.missing(
                earliest == null ? coldest : sameDay(earliest, from),
                latest == null ? coldest.plusMonths(3).minusDays(1) : sameDay(latest, from));
    }

    /** The frost nearest to midsummer on record. */
    private static @Nullable LocalDate extreme(List<SeasonFrost> seasons, boolean spring) {
        SeasonFrost found = null;
        for (SeasonFrost season : seasons) {
            if (season.any() && (found == null || (season.number() > found.number()) == spring)) {
                found = season;
            }
        }
        return found == null ? null : found.day();
    }

    /** The same day of the calendar within the twelve months from a first day. */
    private static LocalDate sameDay(@Nullable LocalDate day, LocalDate from) {
        LocalDate here = day == null ? from : day.withYear(from.getYear());
        return here.isBefore(from) ? here.plusYears(1) : here;
    }
}
