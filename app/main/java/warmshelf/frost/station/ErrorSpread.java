package warmshelf.frost.station;

import java.util.Arrays;

/** How far a way of telling dates was off: the middle of its errors, what nine in ten stay within, and the worst, in days. */
public record ErrorSpread(int stations, double median, double nineTenths, double worst) {

    /** Of signed or unsigned errors; not a number where there are none. */
    public static ErrorSpread of(double[] errors) {
        double[] sorted = Arrays.stream(errors).map(Math::abs).sorted().toArray();
        return new ErrorSpread(sorted.length, quantile(sorted, 0.5), quantile(sorted, 0.9), quantile(sorted, 1));
    }

    private static double quantile(double[] sorted, double share) {
        if (sorted.length == 0) {
            return Double.NaN;
        }
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
