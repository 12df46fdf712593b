package warmshelf.frost.files;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.MonthlyFrost;
import warmshelf.frost.station.Side;

/** Tells a station's frost at the three thresholds from twelve monthly mean minima. */
final class MonthlyStation {
    /** As the services do: where fewer than one year in ten has any, no date is given. */
    private static final double LEAST_FOR_A_DATE = 0.1;

    private MonthlyStation() {}

    /**
     * The station.
     *
     * @param means of January to December in degrees Celsius
     */
    static StationReading of(String name, TypedPlace place, double... means) {
        List<FrostDay> days = new ArrayList<>();
        for (Threshold threshold : Threshold.values()) {
            MonthlyFrost frost = MonthlyFrost.of(means, place.latitude() < 0, threshold.celsius());
            double spring = share(frost.anySpringFrost());
            double autumn = share(frost.anyAutumnFrost());
            // half of the seasons that have a frost at all
            days.add(day(threshold, Side.SPRING, spring, frost.lastSpringFrost(spring / 2), frost.springSd()));
            days.add(day(threshold, Side.AUTUMN, autumn, frost.firstAutumnFrost(autumn / 2), frost.autumnSd()));
        }
        return new StationReading("", name, place.latitude(), place.longitude(), place.elevationM(), days, List.of());
    }

    /** Sums of many small chances may miss 0 and 1 by a hair. */
    private static double share(double any) {
        return Math.min(1, Math.max(0, any));
    }

    private static FrostDay day(Threshold threshold, Side side, double any, OptionalDouble median, OptionalDouble sd) {
        boolean told = any >= LEAST_FOR_A_DATE;
        return new FrostDay(
                threshold, side, any, told ? orNull(median) : null, told && sd.orElse(0) > 0 ? orNull(sd) : null, null);
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }
}
