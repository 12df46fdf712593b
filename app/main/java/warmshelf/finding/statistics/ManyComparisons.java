package warmshelf.finding.statistics;

import java.util.Comparator;
import java.util.stream.IntStream;

/** When many comparisons are made, some differ by chance alone. */
public final class ManyComparisons {
    private ManyComparisons() {}

    /**
     * The chances adjusted by Holm's step-down (Holm 1979, Scand. J. Stat. 6, 65-70), so that a level holds for all comparisons
     * together; in the order in which they were given.
     */
    public static double[] adjusted(double... chances) {
        int[] order = IntStream.range(0, chances.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> chances[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] adjusted = new double[chances.length];
        double largest = 0;
        for (int rank = 0; rank < order.length; rank++) {
            largest = Math.max(largest, Math.min(1, chances[order[rank]] * (order.length - rank)));
            adjusted[order[rank]] = largest;
        }
        return adjusted;
    }
}
