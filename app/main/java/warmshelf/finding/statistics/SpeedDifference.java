package warmshelf.finding.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * How much later half of the seeds that sprouted had, under one way than under another.
 *
 * @param days positive where the first way was later
 * @param interval 95 %, by the bootstrap: seeds drawn anew from those of each way and block, with its percentiles (Efron and
 *     Tibshirani 1993, chapter 13). It holds what chance does among seeds, not what one tray does to all its seeds.
 */
public record SpeedDifference(double days, ConfidenceInterval interval) {
    private static final int DRAWS = 399;
    private static final long START = 20_270_302;

    /** With fewer seeds that sprouted under a way, drawing them anew says nothing. */
    public static final int FEWEST = 5;

    /**
     * Blocks are added together, each way over all its blocks. Empty where fewer than {@value #FEWEST} seeds sprouted under a way.
     */
    public static Optional<SpeedDifference> between(List<Arm> first, List<Arm> second) {
        if (sprouted(first) < FEWEST || sprouted(second) < FEWEST) {
            return Optional.empty();
        }
        double seen = half(times(first)) - half(times(second));
        Random random = new Random(START);
        double[] differences = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            differences[draw] = half(drawn(first, random)) - half(drawn(second, random));
        }
        Arrays.sort(differences);
        int tail = (int) Math.round(0.025 * (DRAWS + 1));
        return Optional.of(
                new SpeedDifference(seen, new ConfidenceInterval(differences[tail - 1], differences[DRAWS - tail])));
    }

    private static int sprouted(List<Arm> arms) {
        return arms.stream().mapToInt(arm -> arm.sprouted().came()).sum();
    }

    private static double half(List<SproutingTime> times) {
        return GerminationCurve.of(times).halfOfThoseThatCame().orElseThrow();
    }

    private static List<SproutingTime> times(List<Arm> arms) {
        return arms.stream().flatMap(arm -> arm.times().stream()).toList();
    }

    /** A draw in which nothing sprouted has no speed and is drawn again; with few seeds in a hundred sprouting that is rare. */
    private static List<SproutingTime> drawn(List<Arm> arms, Random random) {
        List<SproutingTime> drawn = drawnOnce(arms, random);
        while (drawn.stream().noneMatch(SproutingTime::sprouted)) {
            drawn = drawnOnce(arms, random);
        }
        return drawn;
    }

    private static List<SproutingTime> drawnOnce(List<Arm> arms, Random random) {
        List<SproutingTime> drawn = new ArrayList<>();
        for (Arm arm : arms) {
            for (int i = 0; i < arm.times().size(); i++) {
                drawn.add(arm.times().get(random.nextInt(arm.times().size())));
            }
        }
        return drawn;
    }
}
