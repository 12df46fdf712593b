package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceWish;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.HowToTest;
import warmshelf.seed.LotBalance;
import warmshelf.seed.SeedsToACell;
import warmshelf.seed.ShareInterval;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.Verdict;

/**
 * What a member sees before sending a request.
 *
 * @param share of the seeds expected to come up
 * @param interval the middle nine tenths of what that share may be
 * @param survival of seedlings until planting out, as reckoned
 * @param celsius what the dates are reckoned at
 * @param band set-points that suit the seed
 * @param wish what is asked of the mats; null: nothing, or it is too late
 * @param offers the earliest fitting places free today
 * @param balance what of the lot is whose; null: a packet that is not in the box yet
 * @param howToTest how this crop's seed is tested; null where no test is due, or no table tells
 * @param bulbs which kinds of it bulb in the grower's garden; null where that does not matter, or is not known
 * @param roomIsEnough what is to be said to whoever asks for a mat that the seed can do without; else null
 * @param noSpace why there are none; null when there are, or none are asked for
 */
public record AskPlan(
        AskForm.Ask ask,
        Asking asking,
        GerminationShare share,
        ShareInterval interval,
        SeedPlan seeds,
        Survival survival,
        int celsius,
        Band band,
        Timeline timeline,
        @Nullable SpaceWish wish,
        List<SpaceOffer> offers,
        @Nullable LotBalance balance,
        @Nullable HowToTest howToTest,
        @Nullable String bulbs,
        @Nullable RoomIsEnough roomIsEnough,
        @Nullable String noSpace) {

    /** Days until half is up in a lived-in room, and on the mat. */
    public record RoomIsEnough(int celsius, long days, long matDays) {}

    /** Crop and variety, as the sowing will be called. */
    public String title() {
        return ask.variety().isEmpty() ? asking.crop().name() : asking.crop().name() + " · " + ask.variety();
    }

    /** How much of the lot is left and spoken for, in words; empty for a new packet. */
    public String left() {
        return balance == null ? "" : new BalanceWords(balance).left();
    }

    /** Whose seed it is and has to be asked for; empty where nobody is asked. */
    public String asksOwner() {
        return balance != null && balance.isAskedFor(asking.grower().memberId())
                ? String.valueOf(balance.lot().ownerName())
                : "";
    }

    /** Cells to have ready for what sprouts in a bag: as many as may well be wanted. */
    public int cellsForSprouts() {
        return (int) Math.ceil(seeds.seeds() * interval.high());
    }

    /** How many seeds go to a cell and why, such as '2 to a cell: a safety margin (common practice)'. */
    public String perCellWords() {
        SeedsToACell advised = SeedsToACell.advised();
        int pot = asking.crop().inOwnPot() ? 1 : 0;
        if (ask.seedsPerCell() == advised.seeds()) {
            return SAY.toACell(advised.seeds(), pot, advised.why());
        }
        return ask.seedsPerCell() < advised.seeds()
                ? SAY.toACellSavesSeed(ask.seedsPerCell(), pot, advised.seeds(), advised.why())
                : SAY.toACellAdvised(ask.seedsPerCell(), pot, advised.seeds(), advised.why());
    }

    /** Whether sending it makes sense. */
    public boolean canBeSent() {
        return timeline.verdict() != Verdict.TOO_LATE;
    }
}
