package warmshelf.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;

/**
 * Judges a tick by what had been seen when it was seen, whenever it comes in: a phone without signal may send yesterday's look
 * after somebody else's of today.
 *
 * @param before what is kept of the sowing already
 * @param unknown which of it the person could not know, because it was kept after their page was made
 * @param seenAt when the tick was seen; where only its day is known, when it came in
 * @param settles whether its season is closed by it
 */
record TickJudge(
        Sowing sowing, List<Entry> before, Set<UUID> unknown, Tick tick, OffsetDateTime seenAt, boolean settles) {
    /** What changes neither a place nor a packet of seed, and so can simply be taken back. */
    private static final Set<EntryStep> CAN_BE_UNDONE =
            EnumSet.of(EntryStep.LOOK, EntryStep.CHILLED, EntryStep.SOAKED, EntryStep.FIRST_FEED, EntryStep.TRIMMED);

    /** A tick of what somebody saw or did. */
    TickJudge(Sowing sowing, List<Entry> before, Set<UUID> unknown, Tick tick, OffsetDateTime seenAt) {
        this(sowing, before, unknown, tick, seenAt, false);
    }

    /** Why the tick cannot be taken; empty when it can. */
    Optional<TickRefusal> refusal() {
        Optional<Entry> corrected = corrected();
        if (tick.supersedes() != null && corrected.isEmpty()) {
            return Optional.of(new TickRefusal.NotOfThisSowing());
        }
        if (tick.step() == EntryStep.UNDONE && corrected.isPresent()) {
            return refusalToUndo(corrected.get());
        }
        if (isDouble()) {
            return Optional.empty();
        }
        Progress then = progress(seenBefore());
        if (sowing.stage() == SowingStage.WITHDRAWN || openAt(then.stage()).isEmpty()) {
            return Optional.of(new TickRefusal.HasEnded(sowing.title(), sowing.stage()));
        }
        Optional<TickRefusal> unsown = TickRules.countsUnsown(sowing, then, tick);
        if (unsown.isPresent()) {
            return unsown;
        }
        // The same step once more says how it was, not what comes next.
        boolean sameStep =
                corrected.filter(entry -> entry.step() == tick.step()).isPresent();
        return sameStep ? Optional.empty() : refusalByRule(then);
    }

    /** Another phone has sent the same step of the same day: both are kept, and the one seen later counts. */
    boolean isDouble() {
        return tick.fromPhone() != null
                && tick.step() != EntryStep.LOOK
                && tick.supersedes() == null
                && standing().stream()
                        .anyMatch(entry ->
                                entry.step() == tick.step() && entry.seenOn().equals(tick.seenOn()));
    }

    /**
     * The look of the same person and day that says all this one says: the page it was pressed on did not know of it. What
     * somebody else saw is kept beside it, and so is a count that changed, a problem or a note.
     */
    Optional<Entry> repeats(UUID by) {
        boolean tellsMore = tick.step() != EntryStep.LOOK
                || tick.supersedes() != null
                || tick.problem() != null
                || tick.finished()
                || !tick.note().isEmpty();
        return tellsMore || countsChange(progress(seenBefore()))
                ? Optional.empty()
                : Entry.standing(before).stream()
                        .filter(entry -> entry.step() == EntryStep.LOOK
                                && entry.seenOn().equals(tick.seenOn())
                                && entry.by().equals(by))
                        .max(Entry.BY_SEEN);
    }

    private boolean countsChange(Progress then) {
        return differs(tick.sprouted(), TickRules.soFar(sowing, then))
                || differs(tick.moved(), then.moved())
                || differs(tick.lost(), then.lost());
    }

    private static boolean differs(@Nullable Integer counted, int before) {
        return counted != null && counted != before;
    }

    /** Whether a step was seen after this one, so that this one decides no more where the sowing lies. */
    boolean isOvertaken() {
        List<Entry> earlier = seenBefore();
        return tick.supersedes() == null
                && standing().stream().anyMatch(entry -> entry.step() != EntryStep.LOOK && !earlier.contains(entry));
    }

    private Optional<TickRefusal> refusalByRule(Progress then) {
        Set<EntryStep> open = EnumSet.copyOf(openAt(then.stage()));
        // Two clocks never quite agree: what can follow now is not refused for a minute's difference.
        open.addAll(openAt(progress(standing()).stage()));
        if (!open.contains(tick.step())) {
            return Optional.of(TickRules.cannotFollow(sowing, then, tick));
        }
        List<Entry> known = seenBefore().stream()
                .filter(entry -> !unknown.contains(entry.id()))
                .toList();
        return tick.supersedes() == null ? TickRules.fewerThanBefore(sowing, progress(known), tick) : Optional.empty();
    }

    private Set<EntryStep> openAt(SowingStage stage) {
        Set<EntryStep> open = EnumSet.noneOf(EntryStep.class);
        open.addAll(settles ? TickRules.openAtSeasonEnd(stage) : TickRules.open(sowing.method(), stage));
        return open;
    }

    private Optional<TickRefusal> refusalToUndo(Entry corrected) {
        boolean alreadyCorrected =
                before.stream().anyMatch(entry -> corrected.id().equals(entry.supersedes()));
        if (alreadyCorrected) {
            return Optional.of(new TickRefusal.CorrectedAlready());
        }
        return CAN_BE_UNDONE.contains(corrected.step())
                ? Optional.empty()
                : Optional.of(new TickRefusal.MovedOn(corrected.step()));
    }

    private Optional<Entry> corrected() {
        return before.stream()
                .filter(entry -> entry.id().equals(tick.supersedes()))
                .findFirst();
    }

    private List<Entry> standing() {
        return before.stream()
                .filter(entry -> !Objects.equals(entry.id(), tick.supersedes()))
                .toList();
    }

    private List<Entry> seenBefore() {
        LocalDate day = tick.seenOn();
        return standing().stream()
                .filter(entry -> entry.seenOn().isBefore(day)
                        || (entry.seenOn().equals(day) && !entry.seenAt().isAfter(seenAt)))
                .toList();
    }

    private Progress progress(List<Entry> entries) {
        return Progress.of(sowing.method(), sowing.seeds(), entries);
    }
}
