package warmshelf.finding.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The usual figures of speed of those seeds of one sowing that sprouted, as seed laboratories work them out: each seed counts for the
 * day on which it was counted, so they are true to a day only where somebody looked every day. Seeds that never sprouted do not
 * enter, so these figures say nothing of the share.
 */
public final class GerminationSpeed {
    private final List<SproutingTime> sprouted;

    private GerminationSpeed(List<SproutingTime> sprouted) {
        this.sprouted = sprouted;
    }

    /** Of seeds that lay together and were looked at together. */
    public static GerminationSpeed of(List<SproutingTime> times) {
        return new GerminationSpeed(times.stream()
                .filter(SproutingTime::sprouted)
                .sorted(Comparator.comparingDouble(SproutingTime::by))
                .toList());
    }

    /**
     * The day by which half of the seeds that sprouted had, between two counts in proportion (Farooq et al. 2005, J. Integr. Plant
     * Biol. 47, 187-193): t_i + (N/2 - n_i) (t_j - t_i) / (n_j - n_i) with n_i &lt; N/2 &lt;= n_j. Empty where none sprouted.
     */
    public OptionalDouble t50() {
        return reached(sprouted.size() / 2.0);
    }

    /** The same at (N+1)/2 (Coolbear, Francis and Grierson 1984, J. Exp. Bot. 35, 1609-1617). */
    public OptionalDouble t50Coolbear() {
        return reached((sprouted.size() + 1) / 2.0);
    }

    private OptionalDouble reached(double count) {
        int before = 0;
        while (before < sprouted.size()) {
            SproutingTime time = sprouted.get(before);
            int now = before;
            while (now < sprouted.size() && sprouted.get(now).by() == time.by()) {
                now++;
            }
            if (now >= count) {
                double from = countBefore(before);
                return OptionalDouble.of(from + (count - before) * (time.by() - from) / (now - before));
            }
            before = now;
        }
        return OptionalDouble.empty();
    }

    /** The count before that at which this seed was first counted. */
    private double countBefore(int seed) {
        SproutingTime time = sprouted.get(seed);
        return time.exact() && seed > 0 ? sprouted.get(seed - 1).by() : time.after();
    }

    /** Mean germination time: the mean day of those that sprouted; its reciprocal is the mean rate. */
    public OptionalDouble meanTime() {
        return sprouted.stream().mapToDouble(SproutingTime::by).average();
    }

    /** How far apart they came: the standard deviation of the days, in days; empty for fewer than two. */
    public OptionalDouble spread() {
        if (sprouted.size() < 2) {
            return OptionalDouble.empty();
        }
        double mean = meanTime().orElseThrow();
        double squares = sprouted.stream()
                .mapToDouble(time -> (time.by() - mean) * (time.by() - mean))
                .sum();
        return OptionalDouble.of(Math.sqrt(squares / (sprouted.size() - 1)));
    }
}
