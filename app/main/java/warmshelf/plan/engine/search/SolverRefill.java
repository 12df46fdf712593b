package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import warmshelf.plan.engine.solver.SolverProcess;

/**
 * The solver's other part: a few mats of the plan at a time are laid anew by it, see {@link PlaceProgram}, and the outcome is
 * kept when the exact score is better. When the solver dies, what was kept so far stands.
 */
final class SolverRefill {
    /** Places laid anew at once; the solver has been seen to find better plans for as many within a second or two. */
    private static final int PLACES = 8;

    private static final int MOST_WAITING = 40;

    private static final double WORK_A_ROUND = 0.1;
    /** A long round does more than several short ones, where the same mats would come again. */
    private static final double WORK_A_WHOLE_ROUND = 0.4;

    private static final double LEAST_SECONDS = 0.1;

    private final Layout layout;
    private final boolean[] possible;
    private final SolverProcess solver;
    private final Random random;
    private final int startingNumber;
    private final double workARound;
    private final List<Integer> order = new ArrayList<>();

    SolverRefill(Layout layout, boolean[] possible, SolverProcess solver, int startingNumber) {
        this.layout = layout;
        this.possible = possible;
        this.solver = solver;
        this.startingNumber = startingNumber;
        workARound = isWhole(layout.ground) ? WORK_A_WHOLE_ROUND : WORK_A_ROUND;
        random = new Random(startingNumber);
    }

    /** Whether all mats are laid anew at once. */
    static boolean isWhole(IndexedQuestion ground) {
        int places = 0;
        for (int mat = 0; mat < ground.mats; mat++) {
            places += ground.places[mat];
        }
        return places <= PLACES;
    }

    /**
     * Lays mats anew, a few at a time.
     *
     * @param work units of the solver's own deterministic time for all of it
     * @param secondsLeft by the clock
     * @param told after each time
     * @return whether the clock or a cancel ended it
     */
    boolean run(double work, DoubleSupplier secondsLeft, BooleanSupplier cancelled, Runnable told) {
        int rounds = (int) Math.ceil(work / workARound);
        for (int round = 0; round < rounds && solver.isAlive(); round++) {
            if (cancelled.getAsBoolean() || secondsLeft.getAsDouble() < LEAST_SECONDS) {
                return true;
            }
            boolean cutShort = round(startingNumber + round, secondsLeft, cancelled);
            told.run();
            if (cutShort) {
                return true;
            }
        }
        return false;
    }

    private boolean round(int roundStart, DoubleSupplier secondsLeft, BooleanSupplier cancelled) {
        PlaceProgram program = new PlaceProgram(layout, nextMats(), waiting());
        solver.ask(program.program(), secondsLeft.getAsDouble(), workARound, roundStart);
        boolean cutShort = !solver.await(() -> cancelled.getAsBoolean() || secondsLeft.getAsDouble() < LEAST_SECONDS);
        solver.plan().ifPresent(values -> {
            Layout other = program.lay(values);
            if (other.score().compareTo(layout.score()) > 0) {
                layout.restore(other.snapshot());
            }
        });
        return cutShort;
    }

    /** Mats in a random order, so that each comes once before any comes again. */
    private int[] nextMats() {
        List<Integer> next = new ArrayList<>();
        int places = 0;
        while (next.isEmpty() || (places < PLACES && next.size() < layout.ground.mats)) {
            if (order.isEmpty()) {
                for (int mat = 0; mat < layout.ground.mats; mat++) {
                    if (!next.contains(mat)) {
                        order.add(mat);
                    }
                }
                Collections.shuffle(order, random);
            }
            int mat = order.remove(order.size() - 1);
            if (!next.isEmpty() && places + layout.ground.places[mat] > PLACES) {
                order.add(mat);
                break;
            }
            next.add(mat);
            places += layout.ground.places[mat];
        }
        return next.stream().mapToInt(mat -> mat).toArray();
    }

    private List<IndexedRequest> waiting() {
        List<IndexedRequest> waiting = new ArrayList<>();
        for (IndexedRequest ask : layout.ground.asks) {
            if (possible[ask.index()] && layout.spot(ask.index()) == null) {
                waiting.add(ask);
            }
        }
        Collections.shuffle(waiting, random);
        return new ArrayList<>(waiting.subList(0, Math.min(MOST_WAITING, waiting.size())));
    }
}
