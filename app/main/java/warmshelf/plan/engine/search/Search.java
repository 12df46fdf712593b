package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A search that clears a few mats for a few days around something that waits, lays what was there and what waits down again
 * in another order, and keeps the outcome if it is better, or by chance if it is a little worse, the less so the longer it
 * goes on (ruin and recreate with simulated annealing: Schrimpf et al. 2000). Every decision comes from the seed and the
 * count of steps, never from the time.
 */
final class Search {
    private static final double HOTTEST = 0.6;
    private static final double COLDEST = 0.03;
    private static final int MOST_CLEARED = 14;
    private static final int MOST_WAITING = 10;
    private static final int SHARE_FOR_SHIFTS = 8;

    private final Layout layout;
    private final IndexedQuestion ground;
    private final Random random;
    private final PlacementFinder finder;
    private final PlanWorth worth;
    private final UnplacedRequests waiting;
    private final List<IndexedRequest> placeable = new ArrayList<>();
    private final List<IndexedRequest> cleared = new ArrayList<>();
    private final List<TrialPlacement> clearedFrom = new ArrayList<>();
    private final List<IndexedRequest> again = new ArrayList<>();
    private final int[] mats;
    private int matsChosen;

    private Score bestScore;
    private @Nullable TrialPlacement[] best;

    /** Starts from what lies in a layout; requests that could not lie anywhere even alone are left out. */
    Search(Layout layout, boolean[] possible, long startingNumber) {
        this.layout = layout;
        ground = layout.ground;
        random = new Random(startingNumber);
        finder = new PlacementFinder(layout, random);
        worth = new PlanWorth(ground.ranks);
        waiting = new UnplacedRequests(ground.asks.size());
        mats = new int[ground.mats];
        for (IndexedRequest ask : ground.asks) {
            if (possible[ask.index()]) {
                placeable.add(ask);
                if (layout.spot(ask.index()) == null) {
                    waiting.add(ask.index());
                }
            }
        }
        bestScore = layout.score();
        best = layout.snapshot();
    }

    Score bestScore() {
        return bestScore;
    }

    @Nullable
    TrialPlacement[] best() {
        return best;
    }

    /** Effort so far, see {@link PlacementFinder#work}. */
    long work() {
        return finder.work();
    }

    /** Whether there is anything to search for. */
    boolean canGoOn() {
        boolean perfect = bestScore.placed() == placeable.size() && bestScore.shiftDays() == 0;
        return !placeable.isEmpty() && !perfect;
    }

    /** One step; {@code progress} runs from 0 at the start to 1 at the end. */
    void step(double progress) {
        double heat = HOTTEST * Math.pow(COLDEST / HOTTEST, progress);
        double before = PlanWorth.costs(layout);
        boolean forShift = waiting.size() == 0 || random.nextInt(SHARE_FOR_SHIFTS) == 0;
        IndexedRequest centre =
                forShift ? placeable.get(random.nextInt(placeable.size())) : ground.asks.get(waiting.draw(random));
        chooseMats(centre);
        double lost = clear(centre, forShift);
        gatherWaiting(centre);
        order();
        double won = layAgain(taste(forShift, progress));
        double gain = won - lost - (PlanWorth.costs(layout) - before);
        if (gain >= 0 || random.nextDouble() < Math.exp(gain / heat)) {
            keep();
        } else {
            undo();
        }
    }

    private void chooseMats(IndexedRequest centre) {
        TrialPlacement at = layout.spot(centre.index());
        matsChosen = 0;
        int wanted = 1 + random.nextInt(3);
        if (at != null) {
            mats[matsChosen++] = at.mat();
        }
        for (int tries = 0; tries < 12 && matsChosen < wanted; tries++) {
            int mat = random.nextInt(ground.mats);
            if (!isChosen(mat) && suits(centre, mat)) {
                mats[matsChosen++] = mat;
            }
        }
    }

    private boolean isChosen(int mat) {
        for (int i = 0; i < matsChosen; i++) {
            if (mats[i] == mat) {
                return true;
            }
        }
        return false;
    }

    private boolean suits(IndexedRequest ask, int mat) {
        if (!ground.sees(ask, mat)) {
            return false;
        }
        long held = ground.thermostat[mat][ask.earliest()] | ground.thermostat[mat][ask.latest()];
        for (StayOption way : ask.ways()) {
            if ((way.degrees() & held) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Lifts what lies on the chosen mats around a day; returns what that was worth. */
    private double clear(IndexedRequest centre, boolean forShift) {
        cleared.clear();
        clearedFrom.clear();
        TrialPlacement at = layout.spot(centre.index());
        int from = at != null
                ? at.from()
                : centre.earliest() + random.nextInt(Math.max(1, centre.latest() - centre.earliest() + 1));
        int to = from + (at != null ? at.to() - at.from() : centre.ways()[0].days());
        double lost = 0;
        if (at != null) {
            lost += lift(centre);
        }
        double share = forShift ? 0.3 : random.nextInt(4) == 0 ? 1 : 0.4 + 0.5 * random.nextDouble();
        for (int i = 0; i < matsChosen; i++) {
            Layout.StayList stays = layout.onMat(mats[i]);
            for (int k = stays.size() - 1; k >= 0 && cleared.size() < MOST_CLEARED; k--) {
                IndexedRequest ask = ground.asks.get(stays.get(k));
                TrialPlacement spot = layout.spot(ask.index());
                if (spot != null && spot.from() < to && spot.to() > from && random.nextDouble() < share) {
                    lost += lift(ask);
                }
            }
        }
        return lost;
    }

    private double lift(IndexedRequest ask) {
        clearedFrom.add(layout.lift(ask));
        cleared.add(ask);
        return worth.of(layout, ask);
    }

    private void gatherWaiting(IndexedRequest centre) {
        again.clear();
        again.addAll(cleared);
        if (layout.spot(centre.index()) == null && !again.contains(centre)) {
            again.add(centre);
        }
        int tries = Math.min(2 * MOST_WAITING, waiting.size());
        for (int i = 0; i < tries && again.size() < cleared.size() + MOST_WAITING; i++) {
            IndexedRequest ask = ground.asks.get(waiting.draw(random));
            if (overlaps(ask, centre) && !again.contains(ask)) {
                again.add(ask);
            }
        }
    }

    private static boolean overlaps(IndexedRequest a, IndexedRequest b) {
        return a.earliest() < b.latest() + 30 && b.earliest() < a.latest() + 30;
    }

    private void order() {
        Collections.shuffle(again, random);
        switch (random.nextInt(5)) {
            case 0 -> again.sort(Comparator.comparingDouble(ask -> -worth.most(ask) / ask.size()));
            case 1 ->
                again.sort(Comparator.comparingInt((IndexedRequest ask) -> -ask.quarters())
                        .thenComparing(ask -> -worth.most(ask)));
            case 2 -> again.sort(Comparator.comparingInt(IndexedRequest::latest));
            case 3 -> again.sort(Comparator.comparingInt(ask -> -ask.size()));
            default -> {
                // the shuffled order stays
            }
        }
    }

    private PlacementFinder.Taste taste(boolean forShift, double progress) {
        if (forShift) {
            return new PlacementFinder.Taste(1, 0.01, 0.02, 0.01, 0.01, 0.05);
        }
        double shift = random.nextInt(3) == 0 ? 0.3 : 0.02 + 0.1 * progress;
        return new PlacementFinder.Taste(shift, 0.15, 0.3, 0.02, 0.1, random.nextDouble());
    }

    /** Lays down what it can; what was lifted may go to other mats too. Returns what that is worth. */
    private double layAgain(PlacementFinder.Taste taste) {
        double won = 0;
        int known = matsChosen;
        for (IndexedRequest ask : again) {
            matsChosen = known;
            boolean lifted = cleared.contains(ask);
            if (lifted) {
                addOtherMats();
            }
            TrialPlacement spot = finder.find(ask, taste, mats, matsChosen);
            if (spot != null) {
                won += worth.of(layout, ask);
                layout.put(ask, spot);
            }
        }
        matsChosen = known;
        return won;
    }

    private void addOtherMats() {
        for (int i = 0; i < 2 && matsChosen < ground.mats; i++) {
            int mat = random.nextInt(ground.mats);
            if (!isChosen(mat)) {
                mats[matsChosen++] = mat;
            }
        }
    }

    private void keep() {
        for (IndexedRequest ask : again) {
            if (layout.spot(ask.index()) == null) {
                waiting.add(ask.index());
            } else {
                waiting.remove(ask.index());
            }
        }
        if (layout.scoreAtBest().compareTo(bestScore) > 0) {
            Score score = layout.score();
            if (score.compareTo(bestScore) > 0) {
                bestScore = score;
                best = layout.snapshot();
            }
        }
    }

    private void undo() {
        for (IndexedRequest ask : again) {
            if (layout.spot(ask.index()) != null) {
                layout.lift(ask);
            }
        }
        for (int i = 0; i < cleared.size(); i++) {
            layout.put(cleared.get(i), clearedFrom.get(i));
        }
    }

    /** Goes back to the best plan so far, to go on from there. */
    void returnToBest() {
        layout.restore(best);
        for (IndexedRequest ask : placeable) {
            if (layout.spot(ask.index()) == null) {
                waiting.add(ask.index());
            } else {
                waiting.remove(ask.index());
            }
        }
    }
}
