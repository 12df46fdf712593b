package warmshelf.check;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import warmshelf.crop.Method;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;

/** Which ticks make sense for a sowing as it stands. */
final class TickRules {
    private TickRules() {}

    /** The steps that may be entered now. */
    static Set<EntryStep> open(Method method, SowingStage stage) {
        return switch (stage) {
            case PLANNED -> EnumSet.of(EntryStep.LOOK, EntryStep.CHILLED, EntryStep.SOAKED, EntryStep.SOWN);
            case CHILLED -> EnumSet.of(EntryStep.LOOK, EntryStep.SOAKED, EntryStep.SOWN);
            case SOAKED -> EnumSet.of(EntryStep.LOOK, EntryStep.SOWN);
            case SOWN ->
                method == Method.BAG
                        ? EnumSet.of(EntryStep.LOOK, EntryStep.MOVED_TO_CELLS, EntryStep.GAVE_UP)
                        : EnumSet.of(
                                EntryStep.LOOK,
                                EntryStep.OFF_HEAT,
                                EntryStep.UNDER_LIGHT,
                                EntryStep.TAKEN_HOME,
                                EntryStep.GAVE_UP);
            case SPROUTING -> EnumSet.of(EntryStep.LOOK, EntryStep.MOVED_TO_CELLS, EntryStep.GAVE_UP);
            case IN_CELLS, EMERGED ->
                EnumSet.of(
                        EntryStep.LOOK,
                        EntryStep.OFF_HEAT,
                        EntryStep.UNDER_LIGHT,
                        EntryStep.TAKEN_HOME,
                        EntryStep.GAVE_UP);
            case UNDER_LIGHT ->
                EnumSet.of(
                        EntryStep.LOOK,
                        EntryStep.TAKEN_HOME,
                        EntryStep.FIRST_FEED,
                        EntryStep.POTTED_ON,
                        EntryStep.TRIMMED,
                        EntryStep.HARDENING_OFF,
                        EntryStep.PLANTED_OUT,
                        EntryStep.GAVE_UP);
            case FED ->
                EnumSet.of(
                        EntryStep.LOOK,
                        EntryStep.TAKEN_HOME,
                        EntryStep.POTTED_ON,
                        EntryStep.TRIMMED,
                        EntryStep.HARDENING_OFF,
                        EntryStep.PLANTED_OUT,
                        EntryStep.GAVE_UP);
            case POTTED_ON ->
                EnumSet.of(
                        EntryStep.LOOK,
                        EntryStep.TAKEN_HOME,
                        EntryStep.TRIMMED,
                        EntryStep.HARDENING_OFF,
                        EntryStep.PLANTED_OUT,
                        EntryStep.GAVE_UP);
            case HARDENING_OFF -> EnumSet.of(EntryStep.LOOK, EntryStep.PLANTED_OUT, EntryStep.GAVE_UP);
            // Whoever knows what became of it may still say so.
            case NOT_RECORDED -> EnumSet.of(EntryStep.PLANTED_OUT, EntryStep.GAVE_UP);
            case PLANTED_OUT, GIVEN_UP, WITHDRAWN -> EnumSet.noneOf(EntryStep.class);
        };
    }

    /** The steps by which a season's end settles it: of what was noted last nobody may have written down the rest. */
    static Set<EntryStep> openAtSeasonEnd(SowingStage stage) {
        if (stage.isOver()) {
            return EnumSet.noneOf(EntryStep.class);
        }
        return stage.isBeforeSowing()
                ? EnumSet.of(EntryStep.NOT_RECORDED)
                : EnumSet.of(EntryStep.PLANTED_OUT, EntryStep.GAVE_UP, EntryStep.NOT_RECORDED);
    }

    /** Why a tick cannot be taken; empty when it can. */
    static Optional<TickRefusal> refusal(Sowing sowing, Progress progress, Tick tick) {
        if (!open(sowing.method(), progress.stage()).contains(tick.step())) {
            return Optional.of(cannotFollow(sowing, progress, tick));
        }
        return tick.supersedes() == null ? fewerThanBefore(sowing, progress, tick) : Optional.empty();
    }

    static TickRefusal cannotFollow(Sowing sowing, Progress progress, Tick tick) {
        return new TickRefusal.CannotFollow(sowing.title(), progress.stage(), tick.step());
    }

    /** Why a look at what is not sown yet cannot be taken; empty when it can: it tells of a problem, and counts nothing. */
    static Optional<TickRefusal> countsUnsown(Sowing sowing, Progress progress, Tick tick) {
        boolean counts = tick.sprouted() != null || tick.moved() != null || tick.lost() != null || tick.finished();
        return tick.step() == EntryStep.LOOK && progress.stage().isBeforeSowing() && counts
                ? Optional.of(new TickRefusal.NotSownYet(sowing.title()))
                : Optional.empty();
    }

    /** What a count of roots, or of seedlings once the bag is done with, had come to. */
    static int soFar(Sowing sowing, Progress progress) {
        return isInBag(sowing, progress) || sowing.method() == Method.CELLS ? progress.sprouted() : progress.up();
    }

    private static boolean isInBag(Sowing sowing, Progress progress) {
        return sowing.method() == Method.BAG
                && progress.stage().isWaitingForSeed()
                && progress.stage() != SowingStage.IN_CELLS;
    }

    /** Why counts that say 'so far' cannot be taken after those known before; empty when they can. */
    static Optional<TickRefusal> fewerThanBefore(Sowing sowing, Progress progress, Tick tick) {
        boolean inBag = isInBag(sowing, progress);
        int sproutedBefore = soFar(sowing, progress);
        Integer sprouted = tick.sprouted();
        if (sprouted != null && sprouted < sproutedBefore) {
            return Optional.of(new TickRefusal.FewerSprouted(sprouted, sproutedBefore));
        }
        Integer moved = tick.moved();
        int sproutedNow = sprouted == null ? progress.sprouted() : sprouted;
        if (moved != null && moved > sproutedNow && inBag) {
            return Optional.of(new TickRefusal.MoreMovedThanSprouted(moved, sproutedNow));
        }
        if (moved != null && moved < progress.moved()) {
            return Optional.of(new TickRefusal.FewerMoved(moved, progress.moved()));
        }
        return Optional.empty();
    }
}
