package warmshelf.frost.station;

import java.util.Arrays;
import java.util.List;
import warmshelf.frost.Cholesky;

/**
 * Frost dates at a point from those of the stations around it, by simple kriging: each station counts by how much its date
 * tells of the point's, so near ones at the same height count most and a cluster of them no more than it is worth. Dates
 * are first moved by Hopkins' rule; slopes of their own (by latitude, longitude and elevation) are learnt from the stations
 * around and shrink to that rule where these say little.
 *
 * <p>The constants were tuned for this project on 1,500 of 4,913 stations of the 1981-2010 US climate normals, by
 * leave-one-out; see the frost-check command for what they are worth.
 */
final class LocalFit {
    static final int STATIONS = 60;
    /** A hundred metres upward make a station as strange as ten kilometres along the ground. */
    static final double KM_PER_M = 0.1;

    private static final double NEAR_VARIANCE = 30;
    private static final double NEAR_KM = 80;
    private static final double NEAR_M = 400;
    private static final double REGION_VARIANCE = 150;
    private static final double REGION_KM = 400;
    private static final double REGION_M = 1500;
    private static final double LEVEL_VARIANCE = 1000;
    private static final double SLOPE_PER_DEGREE_VARIANCE = 1.5 * 1.5;
    private static final double SLOPE_PER_100M_VARIANCE = 2.0 * 2.0;
    /** What sets two stations side by side apart: hollows, slopes, roofs, lawns. */
    static final double SITE_VARIANCE = 20;

    private final List<NearStation> near;
    private final double[][] offsets;
    private final Cholesky covariance;

    /**
     * Prepares the fit at a point.
     *
     * @param near stations with dates, at least one, seen from the point
     */
    LocalFit(List<NearStation> near, double latitude, double longitude) {
        this.near = near;
        double shrink = Math.cos(Math.toRadians(latitude));
        offsets = near.stream()
                .map(one -> new double[] {
                    one.station().latitude() - latitude,
                    (one.station().longitude() - longitude) * shrink,
                    -one.upwardM() / 100
                })
                .toArray(double[][]::new);
        covariance = new Cholesky(matrix());
    }

    private double[][] matrix() {
        int n = near.size();
        Position[] positions = near.stream()
                .map(one -> Position.of(one.station().latitude(), one.station().longitude()))
                .toArray(Position[]::new);
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double metres = near.get(i).upwardM() - near.get(j).upwardM();
                matrix[i][j] =
                        covariance(positions[i].distanceKm(positions[j]), metres) + trend(offsets[i], offsets[j]);
            }
            double own = near.get(i).station().ownSdDays();
            matrix[i][i] += SITE_VARIANCE + own * own;
        }
        return matrix;
    }

    private static double covariance(double km, double metres) {
        double up = Math.abs(metres);
        return NEAR_VARIANCE * Math.exp(-km / NEAR_KM - up / NEAR_M)
                + REGION_VARIANCE * Math.exp(-km / REGION_KM - up / REGION_M)
                + LEVEL_VARIANCE;
    }

    /** What two places have in common through slopes that are not known beforehand, counted from the point. */
    private static double trend(double[] a, double[] b) {
        return SLOPE_PER_DEGREE_VARIANCE * (a[0] * b[0] + a[1] * b[1]) + SLOPE_PER_100M_VARIANCE * a[2] * b[2];
    }

    /** What each station counts at a height above the point; the weights need not add up to one. */
    double[] weights(double upwardM) {
        double[] above = {0, 0, upwardM / 100};
        double[] right = new double[near.size()];
        for (int i = 0; i < right.length; i++) {
            NearStation one = near.get(i);
            right[i] = covariance(one.distanceKm(), one.upwardM() + upwardM) + trend(offsets[i], above);
        }
        return covariance.solve(right);
    }

    /** The median day of a season at a height above the point, with the weights for that height. */
    double day(Side side, double[] weights, double upwardM) {
        double[] days = new double[near.size()];
        for (int i = 0; i < days.length; i++) {
            StationFrost station = near.get(i).station();
            days[i] = side.sign() * station.days(side).medianDay() - hopkins(offsets[i]);
        }
        double level = median(days);
        double day = level + hopkins(new double[] {0, 0, upwardM / 100});
        for (int i = 0; i < days.length; i++) {
            day += weights[i] * (days[i] - level);
        }
        return side.sign() * day;
    }

    /** Hopkins' rule from the point to an offset; south of the equator the pole lies the other way. */
    private double hopkins(double[] offset) {
        double poleward = Math.signum(near.get(0).station().latitude()) * offset[0];
        return Hopkins.DAYS_PER_DEGREE * poleward + Hopkins.DAYS_PER_100M * offset[2];
    }

    /** Standard deviation of a station's date from the fit, by the fit's own assumptions. */
    double sd(double[] weights) {
        double known = 0;
        for (int i = 0; i < weights.length; i++) {
            known += weights[i]
                    * covariance(near.get(i).distanceKm(), near.get(i).upwardM());
        }
        return Math.sqrt(Math.max(0, NEAR_VARIANCE + REGION_VARIANCE + LEVEL_VARIANCE - known) + SITE_VARIANCE);
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }
}
