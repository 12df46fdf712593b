package warmshelf.frost.evidence;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import warmshelf.frost.Threshold;
import warmshelf.frost.garden.ThermometerRecord;
import warmshelf.frost.minima.DailyMinima;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.Hemisphere;
import warmshelf.frost.minima.SeasonFrost;
import warmshelf.frost.station.Side;

/** Counts a thermometer's seasons, so far as they are over. */
final class ThermometerStation {
    /** So many nights must be on record after a spring's last frost before it is taken to be the last. */
    private static final int NIGHTS_AFTER = 14;

    private ThermometerStation() {}

    static LocalStation of(ThermometerRecord record, LocalDate today) {
        Map<Threshold, Map<Side, SideDates>> dates = new EnumMap<>(Threshold.class);
        for (Threshold threshold : Threshold.values()) {
            dates.put(threshold, sides(record, threshold, today));
        }
        return new LocalStation(
                record.id(),
                LocalStation.Kind.THERMOMETER,
                record.name(),
                record.point().latitude(),
                record.point().longitude(),
                record.point().elevationM(),
                "",
                record.memberId(),
                dates);
    }

    private static Map<Side, SideDates> sides(ThermometerRecord record, Threshold threshold, LocalDate today) {
        if (record.minima().size() == 0) {
            return Map.of();
        }
        Hemisphere hemisphere = Hemisphere.of(record.point().latitude());
        FrostRecord counted = FrostRecord.of(record.minima(), hemisphere, threshold.celsius());
        List<SeasonFrost> springs = counted.spring().seasons().stream()
                .filter(season -> isOver(season, hemisphere, record.minima(), today))
                .toList();
        List<SeasonFrost> autumns = counted.autumn().seasons().stream()
                .filter(season -> season.day() != null
                        || !today.isBefore(hemisphere.autumnFrom(season.year()).plusYears(1)))
                .toList();
        return Map.of(
                Side.SPRING,
                dates(new FrostSide(true, springs, 0)),
                Side.AUTUMN,
                dates(new FrostSide(false, autumns, 0)));
    }

    /** While a spring goes on, the last frost so far need not be the last. */
    private static boolean isOver(SeasonFrost season, Hemisphere hemisphere, DailyMinima minima, LocalDate today) {
        LocalDate midsummer = hemisphere.autumnFrom(season.year());
        LocalDate frost = season.day();
        if (today.isBefore(midsummer) || frost == null) {
            return !today.isBefore(midsummer);
        }
        int missing = minima.missing(frost.plusDays(1), frost.plusDays(2L * NIGHTS_AFTER));
        return 2 * NIGHTS_AFTER - missing >= NIGHTS_AFTER;
    }

    private static SideDates dates(FrostSide side) {
        return new SideDates(
                side.anyFrost(),
                side.medianDay(),
                side.sdDays(),
                side.withFrost() == 0 ? OptionalDouble.empty() : OptionalDouble.of(side.withFrost()));
    }
}
