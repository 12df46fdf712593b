package warmshelf.finding.prediction;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import warmshelf.finding.statistics.ObservedShare;

/**
 * A chance that was told for ranges, and how often what was seen fell into them.
 *
 * @param chance 0 to 1
 */
record ToldRange(double chance, ObservedShare held) {
    /** The chances for which ranges are looked at, the widest last. */
    private static final List<Double> CHANCES = List.of(0.5, 0.8, 0.9);

    /**
     * How often the middle ranges held; none where there is nothing to look at.
     *
     * @param reached how much of what was told lies below what was seen, 0 to 1: evenly spread where what is told is right
     */
    static <T> List<ToldRange> of(List<T> cases, ToDoubleFunction<T> reached) {
        double[] parts = cases.stream().mapToDouble(reached).toArray();
        return cases.isEmpty()
                ? List.of()
                : CHANCES.stream()
                        .map(chance -> new ToldRange(chance, new ObservedShare(within(parts, chance), parts.length)))
                        .toList();
    }

    private static int within(double[] parts, double chance) {
        return (int) Arrays.stream(parts)
                .filter(part -> Math.abs(part - 0.5) <= chance / 2)
                .count();
    }
}
