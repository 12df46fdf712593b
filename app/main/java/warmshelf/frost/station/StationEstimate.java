package warmshelf.frost.station;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import warmshelf.frost.FrostSeason;

/**
 * Frost dates at a point, told from stations around it.
 *
 * @param stations those that count most, with what was done to them
 */
public record StationEstimate(FrostSeason spring, FrostSeason autumn, List<Part> stations) {
    private static final int STATIONS_NAMED = 8;
    private static final double USUAL_YEAR_SD = 12;

    /**
     * One station's part in it.
     *
     * @param weight its share of the answer; a station behind another one may count a little against it
     * @param adjustmentDays how much later the last frost is at the point, by Hopkins' rule
     */
    public record Part(StationFrost station, double distanceKm, double weight, double adjustmentDays) {
        public String name() {
            return station.name();
        }

        public double elevationM() {
            return station.elevationM();
        }
    }

    /** What sets any two places side by side apart, hollows and roofs: a variance in days squared, part of every scatter. */
    public static double siteVariance() {
        return LocalFit.SITE_VARIANCE;
    }

    /**
     * Tells the dates at a point; empty where there is no station with dates at all.
     *
     * @param elevationSdM how well the point's elevation is known, standard deviation in metres
     */
    public static Optional<StationEstimate> at(
            StationSet stations, double latitude, double longitude, double elevationM, double elevationSdM) {
        List<NearStation> near = stations.near(
                latitude,
                longitude,
                elevationM,
                LocalFit.STATIONS,
                LocalFit.KM_PER_M,
                index -> stations.all().get(index).hasDates());
        if (near.isEmpty()) {
            return Optional.empty();
        }
        LocalFit fit = new LocalFit(near, latitude, longitude);
        double[] weights = fit.weights(0);
        return Optional.of(new StationEstimate(
                season(Side.SPRING, near, fit, weights, elevationSdM),
                season(Side.AUTUMN, near, fit, weights, elevationSdM),
                parts(near, weights, latitude, elevationM)));
    }

    private static FrostSeason season(
            Side side, List<NearStation> near, LocalFit fit, double[] weights, double elevationSdM) {
        double slope = side.sign() * Hopkins.DAYS_PER_100M;
        double adjustment = 0;
        double total = 0;
        for (int i = 0; i < weights.length; i++) {
            adjustment += weights[i] * slope * near.get(i).upwardM() / 100;
            total += weights[i];
        }
        return new FrostSeason(
                1,
                fit.day(side, weights, 0),
                total == 0 ? 0 : adjustment / total,
                slope,
                yearSd(side, near),
                fit.sd(weights),
                Math.abs(slope) * elevationSdM / 100);
    }

    private static double yearSd(Side side, List<NearStation> near) {
        double sum = 0;
        double total = 0;
        for (NearStation one : near) {
            if (one.station().days(side).yearSd().orElse(0) > 0) {
                double weight = Math.pow(one.distanceKm() + 15 + LocalFit.KM_PER_M * Math.abs(one.upwardM()), -2);
                sum += weight * one.station().days(side).yearSd().orElseThrow();
                total += weight;
            }
        }
        return total == 0 ? USUAL_YEAR_SD : sum / total;
    }

    private static List<Part> parts(List<NearStation> near, double[] weights, double latitude, double elevationM) {
        double total = 0;
        for (double weight : weights) {
            total += weight;
        }
        double all = total == 0 ? 1 : total;
        return IntStream.range(0, weights.length)
                .mapToObj(i -> new Part(
                        near.get(i).station(),
                        near.get(i).distanceKm(),
                        weights[i] / all,
                        Hopkins.days(near.get(i).station(), latitude, elevationM)))
                .sorted(Comparator.comparingDouble((Part part) -> -Math.abs(part.weight())))
                .limit(STATIONS_NAMED)
                .toList();
    }
}
