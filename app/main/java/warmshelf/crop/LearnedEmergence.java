package warmshelf.crop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;

/**
 * How much later or sooner than published a crop's seed comes up in this group, learned from its own sowings.
 *
 * <p>Normal at each level, on the logarithm of the days, so that all of it can be worked out by averaging with precisions. The
 * spreads are stated, not fitted, because a group has few sowings:
 *
 * <ul>
 *   <li>the group around the table, 0.20: two groups in three lie within a fifth of it, by their mix, mats and thermometers;
 *   <li>a lot around the group, 0.15: varieties and ages of seed differ, less than the crop's whole spread;
 *   <li>a sowing around its lot, 0.25: what the {@link EmergenceSpread} of the published day comes to over both its sides (root
 *       mean square of 0.08 and 0.34). Added is what is not known for want of looks.
 * </ul>
 *
 * <p>So the table weighs more than any single sowing does, and many sowings of one lot never outweigh what other lots may do.
 *
 * @param sowings how many it was learned from; those at temperatures for which nothing is published do not count
 */
public record LearnedEmergence(int sowings, LogShift shift, Map<UUID, OfLot> lots) {
    /** With fewer the table stands as published: one slow tray is no evidence. */
    public static final int FEWEST_SOWINGS = 2;

    private static final LogShift TABLE = new LogShift(0, squared(0.20));
    private static final double BETWEEN_LOTS = squared(0.15);
    private static final double BETWEEN_SOWINGS = squared(0.25);

    /** Of the logarithm of the days of a sowing of which nothing of its kind was seen here, over the published ones. */
    static final double UNSEEN_VARIANCE = TABLE.variance() + BETWEEN_LOTS + BETWEEN_SOWINGS;

    /** Nothing seen: as published. */
    public static final LearnedEmergence NOTHING = new LearnedEmergence(0, TABLE, Map.of());

    /** What was learned of one lot, with the number of its own sowings. */
    public record OfLot(int sowings, LogShift shift) {}

    /** Learns from what was seen of one crop. */
    public static LearnedEmergence of(TemperatureResponse published, List<SeenEmergence> seen) {
        Map<UUID, Measured> lots = new LinkedHashMap<>();
        for (SeenEmergence sowing : seen) {
            OptionalDouble shift = sowing.shift(published);
            if (shift.isPresent()) {
                lots.merge(
                        sowing.lotId(),
                        Measured.once(shift.getAsDouble(), BETWEEN_SOWINGS + sowing.lookingVariance()),
                        Measured::and);
            }
        }
        Map<UUID, OfLot> learned = new LinkedHashMap<>();
        lots.forEach((lot, measured) -> {
            List<Measured> others = new ArrayList<>(lots.values());
            others.remove(measured);
            LogShift expected = group(others).wider(BETWEEN_LOTS);
            learned.put(lot, new OfLot(measured.sowings(), expected.after(measured.mean(), measured.variance())));
        });
        int sowings = lots.values().stream().mapToInt(Measured::sowings).sum();
        return new LearnedEmergence(sowings, group(lots.values()), Map.copyOf(learned));
    }

    private static LogShift group(Iterable<Measured> lots) {
        LogShift belief = TABLE;
        for (Measured lot : lots) {
            belief = belief.after(lot.mean(), lot.variance() + BETWEEN_LOTS);
        }
        return belief;
    }

    /** Whether enough was seen for the table to be shifted. */
    public boolean counts() {
        return sowings >= FEWEST_SOWINGS;
    }

    /** What the published days are multiplied by for this crop here; 1 until enough was seen. */
    public double factor() {
        return counts() ? shift.factor() : 1;
    }

    /** The same for a lot; the crop's where too few sowings of that lot were seen. */
    public double factor(UUID lot) {
        return known(lot).map(own -> own.shift().factor()).orElse(factor());
    }

    /** What was learned of a lot; empty where too little of it was seen for a shift of its own. */
    public Optional<OfLot> known(UUID lot) {
        return Optional.ofNullable(lots.get(lot)).filter(own -> own.sowings() >= FEWEST_SOWINGS);
    }

    private static double squared(double spread) {
        return spread * spread;
    }

    /** The average of a lot's sowings by their precisions, and its variance. */
    private record Measured(int sowings, double mean, double variance) {
        static Measured once(double shift, double variance) {
            return new Measured(1, shift, variance);
        }

        Measured and(Measured more) {
            LogShift both = new LogShift(mean, variance).after(more.mean, more.variance);
            return new Measured(sowings + more.sowings, both.mean(), both.variance());
        }
    }
}
