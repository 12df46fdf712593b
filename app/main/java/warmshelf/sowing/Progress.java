package warmshelf.sowing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.timeline.Seen;

/**
 * Where a sowing stands, read off its entries alone.
 *
 * @param seen the days on which each step really happened
 * @param sprouted roots that showed in the bag so far; in cells the seedlings up
 * @param moved moved from the bag into cells so far
 * @param up seedlings above ground so far
 * @param lost seedlings lost so far
 * @param lastLookOn the last day anyone looked
 * @param settled nothing more of the seed is waited for: all came, or it was taken from where it was sown
 * @param counts each look at which somebody counted, in the order in which they were seen
 */
public record Progress(
        SowingStage stage,
        Seen seen,
        int sprouted,
        int moved,
        int up,
        int lost,
        @Nullable LocalDate lastLookOn,
        @Nullable Problem lastProblem,
        boolean settled,
        List<Count> counts) {

    /**
     * What was counted at one look.
     *
     * @param inBag whether roots in the bag were counted; else seedlings that are up
     * @param soFar how many by then
     */
    public record Count(LocalDate on, boolean inBag, int soFar) {}

    /**
     * Folds entries into the state they leave, in the order in which they were seen, whenever they came in; superseded ones do
     * not count.
     */
    public static Progress of(Method method, int seeds, List<Entry> entries) {
        Folding folding = new Folding(method, seeds);
        Entry.standing(entries).forEach(folding::take);
        return folding.result();
    }

    /** Seedlings alive. */
    public int alive() {
        return Math.max(0, up - lost);
    }

    /** Seedlings alive beyond the plants wanted; 0 where nobody counted. */
    public int beyond(int wanted) {
        return Math.max(0, alive() - wanted);
    }

    /** Whether its seed is in compost or paper, or was. */
    public boolean isSown() {
        return seen.sown() != null;
    }

    /** Whether it lies where its seed was laid out, because nobody has taken it off the heat or moved it all to cells. */
    public boolean isWhereItWasSown(Method method) {
        boolean trayThatIsUp = stage == SowingStage.EMERGED && method == Method.CELLS && seen.offHeat() == null;
        return stage == SowingStage.SOWN || stage == SowingStage.SPROUTING || trayThatIsUp;
    }

    /** Roots that show and still lie in the bag. */
    public int waitingToMove() {
        return Math.max(0, sprouted - moved);
    }

    private static final class Folding {
        private final Method method;
        private final int seeds;
        private final List<Count> counts = new ArrayList<>();
        private final Map<EntryStep, LocalDate> firstDone = new EnumMap<>(EntryStep.class);
        private @Nullable LocalDate firstSprout;
        private @Nullable LocalDate firstUp;
        private @Nullable LocalDate lastLook;
        private @Nullable Problem lastProblem;
        private boolean bagFinished;
        private boolean settled;
        private int sprouted;
        private int moved;
        private int up;
        private int lost;

        Folding(Method method, int seeds) {
            this.method = method;
            this.seeds = seeds;
        }

        void take(Entry entry) {
            firstDone.putIfAbsent(entry.step(), entry.seenOn());
            settled |= entry.step().endsTheWait();
            lastLook = entry.seenOn();
            lastProblem = entry.problem();
            Optional.ofNullable(entry.lost()).ifPresent(count -> lost = count);
            Optional.ofNullable(entry.moved()).ifPresent(count -> moved = count);
            if (entry.sprouted() != null) {
                count(entry.sprouted(), entry.seenOn());
            }
            if (entry.step() == EntryStep.MOVED_TO_CELLS && (entry.finished() || moved >= seeds)) {
                bagFinished = true;
            }
        }

        private void count(int soFar, LocalDate on) {
            boolean inBag = method == Method.BAG && !bagFinished;
            counts.add(new Count(on, inBag, soFar));
            sprouted = method == Method.CELLS || inBag ? soFar : sprouted;
            up = inBag ? up : soFar;
            if (soFar > 0) {
                firstSprout = firstSprout == null ? on : firstSprout;
                firstUp = firstUp == null && !inBag ? on : firstUp;
            }
        }

        private @Nullable LocalDate done(EntryStep step) {
            return firstDone.get(step);
        }

        private @Nullable LocalDate offHeat() {
            for (EntryStep step : List.of(EntryStep.OFF_HEAT, EntryStep.UNDER_LIGHT, EntryStep.TAKEN_HOME)) {
                LocalDate day = done(step);
                if (day != null) {
                    return day;
                }
            }
            return null;
        }

        /** At home it stands in the light there from the day on which it was taken, or came up after that. */
        private @Nullable LocalDate underLight(@Nullable LocalDate emerged) {
            LocalDate group = done(EntryStep.UNDER_LIGHT);
            LocalDate home = done(EntryStep.TAKEN_HOME);
            if (group != null || home == null || emerged == null) {
                return group;
            }
            return emerged.isAfter(home) ? emerged : home;
        }

        Progress result() {
            // A tray of cells leaves the heat because it is up: who says so need not also count.
            LocalDate emerged = firstUp == null && method == Method.CELLS ? offHeat() : firstUp;
            Seen seen = new Seen(
                    done(EntryStep.CHILLED),
                    done(EntryStep.SOAKED),
                    done(EntryStep.SOWN),
                    firstSprout,
                    done(EntryStep.MOVED_TO_CELLS),
                    emerged,
                    offHeat(),
                    underLight(emerged),
                    done(EntryStep.FIRST_FEED),
                    done(EntryStep.POTTED_ON),
                    done(EntryStep.TRIMMED),
                    done(EntryStep.HARDENING_OFF),
                    done(EntryStep.PLANTED_OUT));
            return new Progress(
                    stage(seen),
                    seen,
                    sprouted,
                    moved,
                    up,
                    lost,
                    lastLook,
                    lastProblem,
                    settled || bagFinished || sprouted >= seeds,
                    List.copyOf(counts));
        }

        private SowingStage stage(Seen seen) {
            if (done(EntryStep.GAVE_UP) != null) {
                return SowingStage.GIVEN_UP;
            }
            if (seen.plantedOut() != null) {
                return SowingStage.PLANTED_OUT;
            }
            if (done(EntryStep.NOT_RECORDED) != null) {
                return SowingStage.NOT_RECORDED;
            }
            if (seen.hardeningOff() != null) {
                return SowingStage.HARDENING_OFF;
            }
            if (seen.pottedOn() != null) {
                return SowingStage.POTTED_ON;
            }
            if (seen.firstFeed() != null) {
                return SowingStage.FED;
            }
            return seen.underLight() != null ? SowingStage.UNDER_LIGHT : stageBeforeLight(seen);
        }

        private SowingStage stageBeforeLight(Seen seen) {
            if (seen.emerged() != null) {
                return SowingStage.EMERGED;
            }
            if (bagFinished) {
                return SowingStage.IN_CELLS;
            }
            if (seen.firstSprout() != null) {
                return SowingStage.SPROUTING;
            }
            if (seen.sown() != null) {
                return SowingStage.SOWN;
            }
            if (seen.soaked() != null) {
                return SowingStage.SOAKED;
            }
            return seen.chilled() != null ? SowingStage.CHILLED : SowingStage.PLANNED;
        }
    }
}
