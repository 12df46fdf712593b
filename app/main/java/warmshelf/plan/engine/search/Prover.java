package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.solver.IntegerProgram;
import warmshelf.plan.engine.solver.SolverProcess;

/**
 * The published solver's part: a tighter bound, and now and then a better plan. Without it, or when it dies, the search's
 * own plan and bound stand.
 */
final class Prover implements AutoCloseable {
    private static final double SLACK = 1e-6;
    /** With more factors than this it has not been seen to find anything within a minute. */
    private static final long LARGEST = 20_000;

    private final boolean[] possible;
    private final int startingNumber;
    private final Supplier<@Nullable SolverProcess> starter;
    private boolean started;
    private @Nullable SolverProcess process;
    private List<RoomProgram.Stay> stays = List.of();
    private double proven = Double.MAX_VALUE;
    private boolean settled;
    private int @Nullable [] plan;

    Prover(boolean[] possible, int startingNumber, Supplier<@Nullable SolverProcess> starter) {
        this.possible = possible;
        this.starter = starter;
        this.startingNumber = Math.floorMod(startingNumber, 1_000_000);
    }

    /** Starts the solver's process, so that it is ready when the first question comes. */
    void open() {
        if (process == null) {
            process = starter.get();
        }
    }

    boolean isStarted() {
        return started;
    }

    /** Starts the solver from a known plan; {@code work} is counted by the solver itself, without a clock. */
    void start(IndexedQuestion ground, @Nullable TrialPlacement[] known, double seconds, double work) {
        started = true;
        open();
        if (largest(ground) > LARGEST) {
            settled = true;
            return;
        }
        Layout layout = new Layout(ground);
        layout.restore(known);
        RoomProgram room = new RoomProgram(layout, possible);
        IntegerProgram program = room.build();
        stays = room.stays();
        if (process == null || stays.isEmpty()) {
            settled = true;
        } else {
            process.ask(program, seconds, work, startingNumber);
        }
    }

    /** About how many factors the program has at most for one kind of mat. */
    private static long largest(IndexedQuestion ground) {
        long factors = 0;
        for (IndexedRequest ask : ground.asks) {
            for (StayOption way : ask.ways()) {
                factors += (long) way.days() * Math.max(0, ask.latest() - ask.earliest() + 1);
            }
        }
        return factors;
    }

    /** The solver itself, for other questions, once this one is answered. */
    @Nullable
    SolverProcess process() {
        return process;
    }

    /** No plan places more than this. A figure below what a checked plan places would be the solver's fault: not heard. */
    int bound(int placed) {
        if (process != null && !settled) {
            proven = Math.min(proven, process.bound().orElse(Double.MAX_VALUE));
        }
        int whole = (int) Math.floor(Math.min(proven, Integer.MAX_VALUE - 1) + SLACK);
        return whole < placed ? Integer.MAX_VALUE : whole;
    }

    /** Waits until the solver has done its work; true when it was stopped before. */
    boolean await(double seconds, int placed, BooleanSupplier cancelled) {
        if (process == null || settled) {
            return false;
        }
        long end = System.nanoTime() + (long) (seconds * 1e9);
        boolean answered = process.await(() -> cancelled.getAsBoolean() || System.nanoTime() > end);
        bound(placed);
        plan = process.plan().orElse(null);
        settled = true;
        return !answered;
    }

    /** Lays the solver's plan down as far as the exact rules allow and keeps it if the exact score is better. */
    void improve(Layout layout) {
        if (plan == null) {
            return;
        }
        Layout other = new Layout(layout.ground);
        PlacementFinder finder = new PlacementFinder(other, new Random(0));
        for (RoomProgram.Stay stay : wanted(plan)) {
            IndexedRequest ask = layout.ground.asks.get(stay.ask());
            lay(other, finder, ask, ask.only(stay.way(), stay.from()));
        }
        for (IndexedRequest ask : layout.ground.asks) {
            if (other.spot(ask.index()) == null && possible[ask.index()]) {
                lay(other, finder, ask, ask);
            }
        }
        if (other.score().compareTo(layout.score()) > 0) {
            layout.restore(other.snapshot());
            StartDayPolish.of(layout, () -> false);
        }
    }

    private List<RoomProgram.Stay> wanted(int[] values) {
        List<RoomProgram.Stay> wanted = new ArrayList<>();
        for (RoomProgram.Stay stay : stays) {
            if (stay.number() < values.length && values[stay.number()] == 1) {
                wanted.add(stay);
            }
        }
        wanted.sort(Comparator.comparingInt(RoomProgram.Stay::from));
        return wanted;
    }

    private static void lay(Layout layout, PlacementFinder finder, IndexedRequest ask, IndexedRequest narrowed) {
        TrialPlacement spot = finder.find(narrowed, PlacementFinder.Taste.NEAR);
        if (spot != null) {
            layout.put(ask, spot);
        }
    }

    @Override
    public void close() {
        if (process != null) {
            process.close();
        }
    }
}
