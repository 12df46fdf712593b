package warmshelf.frost.station;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** How far the dates told from twelve monthly minima are off those published for the same stations. */
public record MonthlyCheck(ErrorSpread spring, ErrorSpread autumn) {

    /** One station with both: its dates, and the mean daily minimum of January to December in degrees Celsius. */
    public record Pair(StationFrost station, List<Double> monthlyMinima) {
        MonthlyFrost frost() {
            double[] means =
                    monthlyMinima.stream().mapToDouble(Double::doubleValue).toArray();
            return MonthlyFrost.of(means, station.latitude() < 0);
        }
    }

    /** Compares all pairs; a station where hardly any year has a frost is passed over. */
    public static MonthlyCheck of(List<Pair> pairs) {
        List<double[]> errors =
                pairs.parallelStream().flatMap(MonthlyCheck::errors).toList();
        return new MonthlyCheck(
                ErrorSpread.of(errors.stream().mapToDouble(one -> one[0]).toArray()),
                ErrorSpread.of(errors.stream().mapToDouble(one -> one[1]).toArray()));
    }

    private static Stream<double[]> errors(Pair pair) {
        MonthlyFrost frost = pair.frost();
        // published dates hold for the years with a frost, so half of those
        OptionalDouble spring = frost.lastSpringFrost(frost.anySpringFrost() / 2);
        OptionalDouble autumn = frost.firstAutumnFrost(frost.anyAutumnFrost() / 2);
        if (spring.isEmpty() || autumn.isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(new double[] {
            spring.getAsDouble() - pair.station.days(Side.SPRING).medianDay(),
            autumn.getAsDouble() - pair.station.days(Side.AUTUMN).medianDay()
        });
    }
}
