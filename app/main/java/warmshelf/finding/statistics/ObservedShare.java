package warmshelf.finding.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * So many of so many: a share and what it says of the share in the long run.
 *
 * @param came how many did, 0 to {@code of}
 * @param of out of how many, at least 1
 */
public record ObservedShare(int came, int of) {
    private static final double TAIL = 0.025;
    private static final double Z = NormalDistribution.of(0, 1).inverseSurvivalProbability(TAIL);

    public ObservedShare {
        if (of < 1 || came < 0 || came > of) {
            throw new IllegalArgumentException("%d of %d".formatted(came, of));
        }
    }

    /** The share itself, 0 to 1. */
    public double value() {
        return (double) came / of;
    }

    /** The exact 95 % interval (Clopper and Pearson 1934, Biometrika 26, 404-413): never too narrow, often too wide. */
    public ConfidenceInterval exact() {
        double low = came == 0 ? 0 : BetaDistribution.of(came, of - came + 1.0).inverseCumulativeProbability(TAIL);
        double high =
                came == of ? 1 : BetaDistribution.of(came + 1.0, of - came).inverseSurvivalProbability(TAIL);
        return new ConfidenceInterval(low, high);
    }

    /** The 95 % score interval (Wilson 1927, J. Am. Stat. Assoc. 22, 209-212): right on average, also for few seeds. */
    public ConfidenceInterval wilson() {
        double share = value();
        double middle = (share + Z * Z / (2 * of)) / (1 + Z * Z / of);
        double half = Z * Math.sqrt(share * (1 - share) / of + Z * Z / (4.0 * of * of)) / (1 + Z * Z / of);
        return new ConfidenceInterval(Math.max(0, middle - half), Math.min(1, middle + half));
    }

    /**
     * The 95 % interval of this share less another, from the score intervals of both (Newcombe 1998, Stat. Med. 17, 873-890,
     * method 10).
     */
    public ConfidenceInterval less(ObservedShare other) {
        double difference = value() - other.value();
        double down = Math.hypot(value() - wilson().low(), other.wilson().high() - other.value());
        double up = Math.hypot(
                wilson().high() - value(), other.value() - other.wilson().low());
        return new ConfidenceInterval(Math.max(-1, difference - down), Math.min(1, difference + up));
    }
}
