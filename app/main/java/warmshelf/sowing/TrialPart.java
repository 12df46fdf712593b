package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.time.LocalDate;
import java.util.UUID;

/**
 * What a sowing is of a side-by-side trial.
 *
 * @param number by which people call the trial
 * @param block which of its blocks; the ways of a block are looked at on the same days
 * @param way the letter of its way
 * @param soaked whether its seed is soaked the evening before
 * @param sowOn the day on which all ways of its block are sown
 */
public record TrialPart(UUID trialId, int number, int block, String way, boolean soaked, LocalDate sowOn) {
    /** For example 'trial 3 way B'. */
    public String words() {
        return words(number, way);
    }

    /** The same of a trial and a way by themselves. */
    public static String words(int number, String way) {
        return SAY.trialWay(String.valueOf(number), way);
    }
}
