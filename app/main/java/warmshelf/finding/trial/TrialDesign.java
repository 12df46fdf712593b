package warmshelf.finding.trial;

import java.time.LocalDate;
import java.util.List;
import warmshelf.seed.Lot;

/**
 * A trial as it is to be declared.
 *
 * @param seedsEach of each way in each block
 * @param blocks how many whoever declares it carries
 */
public record TrialDesign(TrialKind kind, Lot lot, List<TrialWay> ways, int seedsEach, int blocks, LocalDate sowOn) {
    public TrialDesign {
        ways = List.copyOf(ways);
        if (ways.size() < 2) {
            throw new IllegalArgumentException("a trial compares two ways at least");
        }
    }

    /** What a block of it uses. */
    public int seedsOfBlock() {
        return ways.size() * seedsEach;
    }

    /** What all its blocks use. */
    public int seeds() {
        return blocks * seedsOfBlock();
    }
}
