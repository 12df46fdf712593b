package warmshelf.frost.evidence;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import warmshelf.frost.Threshold;
import warmshelf.frost.garden.ThermometerRecord;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.station.Side;

/** Counts a thermometer's seasons, those that were read whole. */
final class ThermometerStation {
    private ThermometerStation() {}

    static LocalStation of(ThermometerRecord record) {
        Map<Threshold, Map<Side, SideDates>> dates = new EnumMap<>(Threshold.class);
        for (Threshold threshold : Threshold.values()) {
            record.frost(threshold)
                    .ifPresent(frost -> dates.put(
                            threshold, Map.of(Side.SPRING, dates(frost.spring()), Side.AUTUMN, dates(frost.autumn()))));
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

    private static SideDates dates(FrostSide side) {
        return new SideDates(
                side.anyFrost(),
                side.medianDay(),
                side.sdDays(),
                side.withFrost() == 0 ? OptionalDouble.empty() : OptionalDouble.of(side.withFrost()));
    }
}
