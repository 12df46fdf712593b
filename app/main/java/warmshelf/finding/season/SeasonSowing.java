package warmshelf.finding.season;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.finding.CountedSeeds;
import warmshelf.sowing.Entry;
import warmshelf.sowing.Problem;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;

/**
 * One sowing of a season with what was seen of it.
 *
 * @param entries those that still count, in the order in which they were seen
 * @param lot the seed as its owner would name it, for example 'Lantern Row 2025 of Tom Okafor'
 * @param placeId where its seed first lay; null: nowhere of the group's
 * @param meanC the mean set-point there over its days; null: not on a mat
 * @param compost in which it was sown; null: nobody noted it
 * @param given plants that were handed over to others
 */
public record SeasonSowing(
        Sowing sowing,
        List<Entry> entries,
        Progress progress,
        String lot,
        @Nullable UUID placeId,
        @Nullable Double meanC,
        @Nullable String compost,
        int given) {
    /** One part in so many is many. */
    private static final int MANY = 4;

    public SeasonSowing {
        entries = List.copyOf(entries);
    }

    static SeasonSowing of(
            Sowing sowing,
            List<Entry> all,
            String lot,
            @Nullable UUID placeId,
            @Nullable Double meanC,
            @Nullable String compost) {
        return new SeasonSowing(
                sowing,
                Entry.standing(all),
                Progress.of(sowing.method(), sowing.seeds(), all),
                lot,
                placeId,
                meanC,
                compost,
                0);
    }

    /** The same with so many plants handed over to others. */
    SeasonSowing giving(int plants) {
        return new SeasonSowing(sowing, entries, progress, lot, placeId, meanC, compost, plants);
    }

    public boolean isSown() {
        return progress.isSown();
    }

    /** What was counted where it was sown: roots in a bag, seedlings in cells. */
    public CountedSeeds counted() {
        return CountedSeeds.whereSown(sowing.method(), sowing.seeds(), progress);
    }

    /** Plants that were there when they went out, those given to others among them; 0 while none did. */
    public int grown() {
        return progress.seen().plantedOut() == null ? 0 : progress.alive();
    }

    /** Plants that went out into the grower's garden; 0 while none did. */
    public int plantedOut() {
        return Math.max(0, grown() - given);
    }

    /** Whether somebody noted that problem at it. */
    boolean had(Problem problem) {
        return entries.stream().anyMatch(entry -> entry.problem() == problem);
    }

    /** Whether a quarter or more of its seedlings was lost, or it was given up. */
    boolean lostMany() {
        return isGivenUp() || MANY * progress.lost() >= Math.max(1, progress.up());
    }

    public boolean isGivenUp() {
        return progress.stage() == SowingStage.GIVEN_UP;
    }
}
