package warmshelf.frost.station;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Fits the grid cell by cell from stations. */
final class SurfaceFit {
    private static final int NEIGHBOURS = 30;
    private static final double SOFT_KM = 15;
    /** The slope with elevation is read off over this height above and below the reference elevation. */
    private static final double SLOPE_M = 300;
    /** A normal distribution's standard deviation is so many times its mean absolute deviation. */
    private static final double SD_PER_MEAN_DEVIATION = 1.2533;
    /** Year-to-year spread where no station near tells it: the middle of those that do, in the stations fitted first. */
    private static final double USUAL_YEAR_SD = 12;

    private final StationSet stations;
    private final double[] springErrors;
    private final double[] autumnErrors;

    private SurfaceFit(StationSet stations) {
        this.stations = stations;
        springErrors = new double[stations.size()];
        autumnErrors = new double[stations.size()];
    }

    /** A fit for dates alone: without the scatter of stations around it, which takes another fit at each of them. */
    static SurfaceFit ofDatesAlone(StationSet stations) {
        return new SurfaceFit(stations);
    }

    /** A full fit; leaves each station out once to see how far stations lie from their neighbours' fit. */
    static SurfaceFit of(StationSet stations) {
        SurfaceFit fit = new SurfaceFit(stations);
        Estimates estimates = new Estimates(stations);
        IntStream.range(0, stations.size()).parallel().forEach(index -> fit.leaveOut(index, estimates));
        return fit;
    }

    private void leaveOut(int index, Estimates estimates) {
        StationFrost one = stations.all().get(index);
        if (!one.hasDates()) {
            return;
        }
        estimates
                .fitted(one.latitude(), one.longitude(), one.elevationM(), other -> other != index)
                .ifPresent(days -> {
                    springErrors[index] =
                            Math.abs(days.spring() - one.days(Side.SPRING).medianDay());
                    autumnErrors[index] =
                            Math.abs(days.autumn() - one.days(Side.AUTUMN).medianDay());
                });
    }

    /** The cell at a grid point. */
    SurfaceCell cell(double latitude, double longitude) {
        return cell(latitude, longitude, index -> true);
    }

    /**
     * The cell at a grid point from some of the stations.
     *
     * @param eligible which stations, by their index, take part
     */
    SurfaceCell cell(double latitude, double longitude, IntPredicate eligible) {
        IntPredicate dated = index -> stations.all().get(index).hasDates() && eligible.test(index);
        double reference = referenceElevation(latitude, longitude, dated);
        List<NearStation> near =
                stations.near(latitude, longitude, reference, LocalFit.STATIONS, LocalFit.KM_PER_M, dated);
        LocalFit fit = new LocalFit(near, latitude, longitude);
        double[] here = fit.weights(0);
        double[] above = fit.weights(SLOPE_M);
        double[] below = fit.weights(-SLOPE_M);
        List<NearStation> closest = near.subList(0, Math.min(NEIGHBOURS, near.size()));
        return new SurfaceCell(
                latitude,
                longitude,
                reference,
                figures(Side.SPRING, fit, here, above, below, closest, springErrors),
                figures(Side.AUTUMN, fit, here, above, below, closest, autumnErrors),
                near.stream().mapToDouble(NearStation::distanceKm).min().orElse(Double.NaN),
                rareShare(latitude, longitude, reference, eligible));
    }

    /** The elevation for which the dates hold: that of the stations around, the nearer counting more. */
    private double referenceElevation(double latitude, double longitude, IntPredicate dated) {
        List<NearStation> nearest = stations.near(latitude, longitude, 0, NEIGHBOURS, 0, dated);
        return Math.round(mean(
                nearest,
                one -> Math.pow(one.distanceKm() + SOFT_KM, -2),
                one -> one.station().elevationM()));
    }

    private static SurfaceCell.Figures figures(
            Side side,
            LocalFit fit,
            double[] here,
            double[] above,
            double[] below,
            List<NearStation> closest,
            double[] errors) {
        double slope = (fit.day(side, above, SLOPE_M) - fit.day(side, below, -SLOPE_M)) / (2 * SLOPE_M / 100);
        double scatter = SD_PER_MEAN_DEVIATION * mean(closest, SurfaceFit::nearness, one -> errors[one.index()]);
        double yearSd = mean(
                closest.stream()
                        .filter(one -> one.station().days(side).yearSd().isPresent())
                        .toList(),
                SurfaceFit::nearness,
                one -> one.station().days(side).yearSd().orElseThrow());
        return new SurfaceCell.Figures(fit.day(side, here, 0), slope, scatter, yearSd > 0 ? yearSd : USUAL_YEAR_SD);
    }

    private double rareShare(double latitude, double longitude, double elevationM, IntPredicate eligible) {
        List<NearStation> closest =
                stations.near(latitude, longitude, elevationM, NEIGHBOURS, LocalFit.KM_PER_M, eligible);
        return mean(closest, SurfaceFit::nearness, one -> one.station().hasDates() ? 0 : 1);
    }

    private static double nearness(NearStation one) {
        return Math.pow(one.distanceKm() + SOFT_KM + LocalFit.KM_PER_M * Math.abs(one.upwardM()), -2);
    }

    private static double mean(
            List<NearStation> near, ToDoubleFunction<NearStation> weight, ToDoubleFunction<NearStation> value) {
        double total = near.stream().mapToDouble(weight).sum();
        return near.stream()
                        .mapToDouble(one -> weight.applyAsDouble(one) * value.applyAsDouble(one))
                        .sum()
                / total;
    }
}
