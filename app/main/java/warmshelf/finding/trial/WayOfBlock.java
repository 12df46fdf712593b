package warmshelf.finding.trial;

import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.finding.CountTrouble;
import warmshelf.finding.CountedSeeds;
import warmshelf.sowing.Entry;
import warmshelf.sowing.History;
import warmshelf.sowing.Progress;
import warmshelf.sowing.SowingStage;

/**
 * One way of a block as it stands.
 *
 * @param lastDay days after sowing by which nearly all should show
 * @param roots whether roots are counted rather than seedlings, because all ways lie in bags
 * @param lot whether it is sown from the trial's own lot
 */
public record WayOfBlock(TrialWay way, History history, int lastDay, boolean roots, boolean lot) {
    /** Why the way of a block is left out of what is compared. */
    enum LeftOut {
        WITHDRAWN,
        OTHER_LOT,
        NOT_COUNTED,
        COUNTS_FELL,
        MORE_THAN_SOWN
    }

    public Progress progress() {
        return history.progress();
    }

    /** Its seeds, each with when it came up; the same is counted for every way. */
    CountedSeeds seeds() {
        Method method = history.sowing().method();
        int sown = history.sowing().seeds();
        return roots ? CountedSeeds.roots(sown, progress()) : CountedSeeds.up(method, sown, progress());
    }

    boolean isWithdrawn() {
        return history.sowing().stage() == SowingStage.WITHDRAWN;
    }

    /** The day on which it was sown; null: not yet. */
    @Nullable
    LocalDate sownOn() {
        return progress().seen().sown();
    }

    /** The days on which somebody was at it; of one that was counted there is one at least. */
    TreeSet<LocalDate> lookedOn() {
        return Entry.standing(history.entries()).stream()
                .map(Entry::seenOn)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Why it cannot be compared; empty where it can. */
    Optional<LeftOut> leftOut() {
        if (isWithdrawn()) {
            return Optional.of(LeftOut.WITHDRAWN);
        }
        if (!lot) {
            return Optional.of(LeftOut.OTHER_LOT);
        }
        return seeds().troubles().stream()
                .filter(CountTrouble::withholds)
                .findFirst()
                .map(trouble -> switch (trouble) {
                    case FELL -> LeftOut.COUNTS_FELL;
                    case MORE_THAN_SOWN -> LeftOut.MORE_THAN_SOWN;
                    default -> LeftOut.NOT_COUNTED;
                });
    }

    /**
     * Whether nothing more is to be expected of it: all are up, it has ended or grown on, or it was looked at until nearly all should
     * show. Where nobody looks any more, twice those days do.
     */
    boolean hasEnded(LocalDate today) {
        SowingStage stage = history.sowing().stage();
        LocalDate sown = sownOn();
        if (stage.isOver() || stage.compareTo(SowingStage.UNDER_LIGHT) > 0) {
            return true;
        }
        if (sown == null) {
            return false;
        }
        CountedSeeds seeds = seeds();
        boolean all = seeds.given() && seeds.came() == history.sowing().seeds();
        LocalDate looked = progress().lastLookOn();
        boolean seenToTheEnd = looked != null && !looked.isBefore(sown.plusDays(lastDay));
        return all || seenToTheEnd || !today.isBefore(sown.plusDays(2L * lastDay));
    }
}
