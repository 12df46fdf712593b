package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import warmshelf.crop.Emergence;
import warmshelf.finding.statistics.SpeedDifference;
import warmshelf.finding.statistics.TrialSize;
import warmshelf.words.Numbers;

/**
 * What a trial of so many seeds can show, told before it is declared.
 *
 * @param ways how many are compared
 * @param seedsEach of each way, all blocks together
 * @param blocks how many trays or bags of each way
 * @param share of the seeds expected to come up, 0 to 1
 * @param days by which half of those are expected to be up
 * @param logSpread between seeds of one sowing, of the logarithm of their days
 */
record TrialOutlook(int ways, int seedsEach, int blocks, double share, double days, double logSpread) {
    /** What people would want to know of, common sense rather than a rule: a fifth of the time, and 15 seedlings in 100. */
    private static final double WORTH_KNOWING = 1.2;

    /** The days by which half had come are compared: a median tells as much as the mean of so much fewer. */
    private static final double MEDIAN_TELLS = 2 / Math.PI;

    private static final double SHARE_WORTH_KNOWING = 0.15;

    static TrialOutlook of(TrialDesign design, double share, Emergence emergence) {
        int blocks = Math.max(1, design.blocks());
        return new TrialOutlook(
                design.ways().size(),
                blocks * design.seedsEach(),
                blocks,
                share,
                emergence.days(),
                emergence.logSpread());
    }

    /** How many of each way should come up. */
    double sprouts() {
        return seedsEach * share;
    }

    /** By how many days the slower of two ways has to be slower to be found so in 8 such trials of 10. */
    double daysShown() {
        return days * (TrialSize.ratioOfDaysShown(MEDIAN_TELLS * sprouts(), logSpread) - 1);
    }

    /** The share below the expected one that would be told from it in 8 such trials of 10; 0 where none would. */
    double shareShown() {
        return TrialSize.lowerShareShown(share, seedsEach);
    }

    /** Seeds of each way to show a difference of a fifth of the time. */
    int seedsForSpeed() {
        return (int) Math.ceil(TrialSize.sproutsForRatioOfDays(WORTH_KNOWING, logSpread) / MEDIAN_TELLS / share);
    }

    /** Seeds of each way to show 15 seedlings in 100 fewer. */
    int seedsForShare() {
        return TrialSize.seedsForShares(share, lowerShare());
    }

    private double lowerShare() {
        return Math.max(0, share - SHARE_WORTH_KNOWING);
    }

    /** In sentences, what can be seen first and what would be needed last. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        words.add(SAY.outlookExpected(seedsEach, Math.round(sprouts()), Math.round(days)));
        words.add(
                sprouts() < SpeedDifference.FEWEST
                        ? SAY.outlookNoSpeed(SpeedDifference.FEWEST)
                        : SAY.outlookSpeed(Numbers.oneDecimalAtMost(daysShown())));
        words.add(
                shareShown() < 0.005 ? SAY.outlookNoShare() : SAY.outlookShare(hundred(share), hundred(shareShown())));
        words.add(SAY.outlookNeeded(
                Numbers.oneDecimalAtMost(days * (WORTH_KNOWING - 1)),
                seedsForSpeed(),
                hundred(share),
                hundred(lowerShare()),
                seedsForShare()));
        if (ways > 2) {
            words.add(SAY.outlookThreeWays());
        }
        if (blocks == 1) {
            words.add(SAY.outlookOneTray());
        }
        return words;
    }

    private static long hundred(double share) {
        return Math.round(100 * share);
    }
}
