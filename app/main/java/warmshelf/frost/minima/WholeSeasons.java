package warmshelf.frost.minima;

import java.time.LocalDate;
import java.util.List;

/**
 * Leaves out the seasons that a record tells only part of. A reader who began or stopped in the middle of a spring saw a last
 * frost, but perhaps not the last one. A spring counts when it was read on for six weeks after its last frost and at least
 * until two months before midsummer is out, an autumn when it was read as long before its first; up to nine days may be
 * missing there, as everywhere.
 */
public final class WholeSeasons {
    private static final int TOO_MANY_MISSING = 10;
    private static final int WEEKS_WITHOUT_FROST = 6;
    private static final int MONTHS_FROM_MIDSUMMER = 2;

    private WholeSeasons() {}

    /** The record without those seasons, which are counted among the ones left out. */
    public static FrostRecord of(FrostRecord record, DailyMinima minima) {
        return new FrostRecord(
                record.hemisphere(),
                record.thresholdC(),
                whole(record.spring(), record.hemisphere(), minima),
                whole(record.autumn(), record.hemisphere(), minima),
                record.yearsWithoutReading());
    }

    private static FrostSide whole(FrostSide side, Hemisphere hemisphere, DailyMinima minima) {
        List<SeasonFrost> kept = side.seasons().stream()
                .filter(season -> isWhole(season, side.spring(), hemisphere, minima))
                .toList();
        return new FrostSide(
                side.spring(), kept, side.leftOut() + side.seasons().size() - kept.size());
    }

    private static boolean isWhole(SeasonFrost season, boolean spring, Hemisphere hemisphere, DailyMinima minima) {
        LocalDate frost = season.day();
        LocalDate midsummer = hemisphere.autumnFrom(season.year());
        if (frost == null) {
            // without a frost in half a year all of it must have been read
            LocalDate from = spring ? midsummer.minusMonths(6) : midsummer.plusMonths(MONTHS_FROM_MIDSUMMER);
            LocalDate to = spring ? midsummer.minusMonths(MONTHS_FROM_MIDSUMMER) : midsummer.plusMonths(6);
            return minima.missing(from, to) < TOO_MANY_MISSING;
        }
        return minima.missing(
                        spring ? frost.plusDays(1) : earlier(frost.minusWeeks(WEEKS_WITHOUT_FROST), midsummer),
                        spring ? later(frost.plusWeeks(WEEKS_WITHOUT_FROST), midsummer) : frost.minusDays(1))
                < TOO_MANY_MISSING;
    }

    /** The later of a day and two months before midsummer, yet not beyond midsummer. */
    private static LocalDate later(LocalDate day, LocalDate midsummer) {
        LocalDate least = midsummer.minusMonths(MONTHS_FROM_MIDSUMMER);
        LocalDate last = day.isAfter(least) ? day : least;
        return last.isBefore(midsummer) ? last : midsummer.minusDays(1);
    }

    /** The earlier of a day and two months after midsummer, yet not before midsummer. */
    private static LocalDate earlier(LocalDate day, LocalDate midsummer) {
        LocalDate most = midsummer.plusMonths(MONTHS_FROM_MIDSUMMER);
        LocalDate first = day.isBefore(most) ? day : most;
        return first.isAfter(midsummer) ? first : midsummer;
    }
}
