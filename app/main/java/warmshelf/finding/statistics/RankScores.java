package warmshelf.finding.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * A figure for each seed of a block, larger the sooner it sprouted, from the curve of all seeds of the block together: the scores of
 * Sun (1996), which for exact times are 1 less the cumulative hazard, those of the log-rank test. They sum to zero.
 */
final class RankScores {
    private final List<double[]> ofArms;
    private final int seeds;
    private final double variance;

    private RankScores(List<double[]> ofArms) {
        this.ofArms = ofArms;
        int count = 0;
        double squares = 0;
        for (double[] scores : ofArms) {
            count += scores.length;
            for (double score : scores) {
                squares += score * score;
            }
        }
        seeds = count;
        variance = count > 1 ? squares / (count - 1) : 0;
    }

    static RankScores of(List<Arm> block) {
        GerminationCurve curve = GerminationCurve.of(
                block.stream().flatMap(arm -> arm.times().stream()).toList());
        List<double[]> ofArms = new ArrayList<>();
        for (Arm arm : block) {
            ofArms.add(
                    arm.times().stream().mapToDouble(time -> score(time, curve)).toArray());
        }
        return new RankScores(ofArms);
    }

    /**
     * With S the share not yet sprouted and H the cumulative hazard, the sum of p_j / S(before j): -(S(after) H(after) - S(by) H(by)) /
     * (S(after) - S(by)) over what the seed's own interval holds.
     */
    private static double score(SproutingTime time, GerminationCurve curve) {
        double left = 1;
        double hazard = 0;
        double before = 0;
        double held = 0;
        for (GerminationCurve.Step step : curve.steps()) {
            boolean within = within(step, time);
            boolean earlier = !within && step.by() <= time.after();
            double next = left - step.share();
            double nextHazard = hazard + step.share() / left;
            if (within) {
                before += next * nextHazard - left * hazard;
                held += step.share();
            }
            if (within || earlier) {
                left = next;
                hazard = nextHazard;
            }
        }
        if (!time.sprouted()) {
            // what never sprouts has the hazard 1 / left in the end, and then nothing is left
            before -= left * hazard;
            held += left;
        }
        return held > 0 ? before / held : 0;
    }

    /** A seed that had not sprouted by a day did not sprout at that very moment either. */
    private static boolean within(GerminationCurve.Step step, SproutingTime time) {
        boolean begins = step.after() > time.after()
                || (step.after() == time.after() && (time.exact() || step.by() > step.after()));
        return begins && step.by() <= time.by();
    }

    /** The scores of one arm, in the order of its seeds. */
    double[] of(int arm) {
        return ofArms.get(arm);
    }

    double sum(int arm) {
        double sum = 0;
        for (double score : ofArms.get(arm)) {
            sum += score;
        }
        return sum;
    }

    int seeds() {
        return seeds;
    }

    /** Of one score drawn from all, with n - 1. */
    double variance() {
        return variance;
    }
}
