package warmshelf.seed;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import warmshelf.seed.GerminationShare.Exact;
import warmshelf.seed.GerminationShare.Uncertain;

/** The chance that enough cells end with a plant. */
final class CellChances {
    /** Up to so many cells it costs less to sum over the seeds that come up than to average over the share. */
    private static final int FEW_CELLS = 500;

    private CellChances() {}

    static double enoughPlants(SeedQuestion question, int cells) {
        if (question.share() instanceof Exact exact) {
            return binomial(question.plantsWanted(), cells, plantInCell(question, exact.mean()));
        }
        Uncertain share = (Uncertain) question.share();
        if (question.perCell() == 1 && question.survival() == 1) {
            return BetaBinomial.atLeast(question.plantsWanted(), cells, share.a(), share.b());
        }
        if (question.perCell() == 1 && cells <= FEW_CELLS) {
            return BetaBinomial.average(
                    cells,
                    share.a(),
                    share.b(),
                    up -> up < question.plantsWanted()
                            ? 0
                            : binomial(question.plantsWanted(), up, question.survival()));
        }
        return BetaAverage.of(
                share.a(), share.b(), p -> binomial(question.plantsWanted(), cells, plantInCell(question, p)));
    }

    /** A cell ends with a plant when one of its seeds comes up and the one that is kept lives. */
    private static double plantInCell(SeedQuestion question, double share) {
        return (1 - Math.pow(1 - share, question.perCell())) * question.survival();
    }

    private static double binomial(int wanted, int cells, double share) {
        return BinomialDistribution.of(cells, share).survivalProbability(wanted - 1);
    }
}
