package warmshelf.frost.station;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/** The ways to tell a place's median frost day from stations around it. Each is empty where there is no station at all. */
final class Estimates {
    private static final int HOPKINS_STATIONS = 10;
    private static final double HOPKINS_SOFT_KM = 15;

    private final StationSet stations;

    Estimates(StationSet stations) {
        this.stations = stations;
    }

    /** The local fit that the program itself uses. */
    Optional<Days> fitted(double latitude, double longitude, double elevationM, IntPredicate eligible) {
        List<NearStation> near = stations.near(
                latitude,
                longitude,
                elevationM,
                LocalFit.STATIONS,
                LocalFit.KM_PER_M,
                index -> hasDates(index) && eligible.test(index));
        if (near.isEmpty()) {
            return Optional.empty();
        }
        LocalFit fit = new LocalFit(near, latitude, longitude);
        double[] weights = fit.weights(0);
        return Optional.of(new Days(fit.day(Side.SPRING, weights, 0), fit.day(Side.AUTUMN, weights, 0)));
    }

    /** The ten nearest stations, each moved by Hopkins' rule, the nearer counting more. */
    Optional<Days> byHopkins(double latitude, double longitude, double elevationM, IntPredicate eligible) {
        double total = 0;
        double spring = 0;
        double autumn = 0;
        for (NearStation one : nearest(latitude, longitude, elevationM, HOPKINS_STATIONS, eligible)) {
            double weight = Math.pow(one.distanceKm() + HOPKINS_SOFT_KM, -2);
            double moved = Hopkins.days(one.station(), latitude, elevationM);
            total += weight;
            spring += weight * (one.station().days(Side.SPRING).medianDay() + moved);
            autumn += weight * (one.station().days(Side.AUTUMN).medianDay() - moved);
        }
        return total == 0 ? Optional.empty() : Optional.of(new Days(spring / total, autumn / total));
    }

    /** What somebody does who takes the nearest station's dates as they stand. */
    Optional<Days> nearestUnadjusted(double latitude, double longitude, double elevationM, IntPredicate eligible) {
        return nearest(latitude, longitude, elevationM, 1, eligible).stream()
                .findFirst()
                .map(one -> new Days(
                        one.station().days(Side.SPRING).medianDay(),
                        one.station().days(Side.AUTUMN).medianDay()));
    }

    private List<NearStation> nearest(
            double latitude, double longitude, double elevationM, int count, IntPredicate eligible) {
        return stations.near(
                latitude, longitude, elevationM, count, 0, index -> hasDates(index) && eligible.test(index));
    }

    private boolean hasDates(int index) {
        return stations.all().get(index).hasDates();
    }

    /** The median day of both seasons, as numbers of a 365-day year. */
    record Days(double spring, double autumn) {
        double of(Side side) {
            return side == Side.SPRING ? spring : autumn;
        }
    }
}
