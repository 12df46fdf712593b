package warmshelf.surplus;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.Stay;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;

/**
 * How many seedlings of a sowing there are to give away, and whether it is the time for it.
 *
 * @param season the year of planting out that the group works towards
 * @param holds the racks that are held because of pests or virus: nothing is given away from them
 */
record SurplusJudge(LocalDate today, int season, RackHolds holds) {
    /** What was left over when the others went out is leggy or dead by then; common practice. */
    private static final int DAYS_AFTER_PLANTING_OUT = 21;

    /** Why nothing of it may be given away or taken now; empty: it may. */
    Optional<SurplusRefusal> whyClosed(Sowing sowing, Progress progress, List<Stay> stays) {
        if (!isOpen(sowing, progress)) {
            return Optional.of(new SurplusRefusal.NotOpen(sowing.title()));
        }
        return isHeld(stays) ? Optional.of(new SurplusRefusal.OnHeldRack(sowing.title())) : Optional.empty();
    }

    /** Whether there are seedlings, and neither it nor its season is over. */
    private boolean isOpen(Sowing sowing, Progress progress) {
        SowingStage stage = progress.stage();
        LocalDate out = progress.seen().plantedOut();
        boolean ended = stage == SowingStage.GIVEN_UP
                || stage == SowingStage.NOT_RECORDED
                || sowing.stage() == SowingStage.WITHDRAWN
                || sowing.isBefore(season)
                || (out != null && today.isAfter(out.plusDays(DAYS_AFTER_PLANTING_OUT)));
        boolean hasPlants = stage == SowingStage.IN_CELLS || !(stage.isBeforeSowing() || stage.isWaitingForSeed());
        return hasPlants && !ended;
    }

    /** Whether it lies on a rack that is held. */
    private boolean isHeld(List<Stay> stays) {
        return stays.stream()
                .filter(stay -> !stay.from().isAfter(today) && stay.to().isAfter(today))
                .anyMatch(stay -> holds.at(stay.placeId()).isPresent());
    }

    /** How many can be given away: the seedlings alive, or as many as were sown where nobody counted. */
    static int most(Sowing sowing, Progress progress) {
        int counted = progress.stage() == SowingStage.IN_CELLS ? progress.moved() : progress.up();
        return Math.max(0, (counted == 0 ? sowing.seeds() : counted) - progress.lost());
    }

    /** How many are still free of those offered: seedlings that died meanwhile are not. */
    static int free(Sowing sowing, Progress progress, int offered, int taken) {
        return Math.max(0, Math.min(offered, most(sowing, progress)) - taken);
    }

    /** How many are alive beyond the plants that the grower wanted; 0 where nobody counted. */
    static int beyondWanted(Sowing sowing, Progress progress) {
        return progress.beyond(sowing.plantsWanted());
    }
}
