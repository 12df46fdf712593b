package warmshelf.plan.engine.search;

import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Looks for the best free spot for a request, on all mats or on some, by a taste that tells which free spot is best. */
final class PlacementFinder {
    /**
     * What makes a spot good; each is a cost.
     *
     * @param shift for each day away from the ideal start
     * @param gap for each quarter that is left free right before or after
     * @param breakage for each larger piece of a place that is broken up
     * @param warm for each day on which the mat would otherwise be off
     * @param slow for each quarter-day that the stay takes longer than it could
     * @param noise the most that chance adds
     */
    record Taste(double shift, double gap, double breakage, double warm, double slow, double noise) {
        static final Taste NEAR = new Taste(1, 0.02, 0.02, 0.001, 0.01, 0);
    }

    private static final int ANY = -1;
    private static final int[][] MASKS = {{}, {1, 2, 4, 8}, {3, 12}, {}, {15}};
    private static final int[][] BREAKAGE = breakage();

    private final Layout layout;
    private final IndexedQuestion ground;
    private final Random random;

    private double bestCost;
    private @Nullable TrialPlacement best;
    private long work;
    private int onlyPlace = ANY;
    private final boolean anyCurrent;

    PlacementFinder(Layout layout, Random random) {
        this(layout, random, false);
    }

    /** {@code anyCurrent}: as if every circuit could carry all its mats, to tell whether that is what is missing. */
    PlacementFinder(Layout layout, Random random, boolean anyCurrent) {
        this.anyCurrent = anyCurrent;
        this.layout = layout;
        this.random = random;
        ground = layout.ground;
    }

    /** The best spot on any mat. */
    @Nullable
    TrialPlacement find(IndexedRequest ask, Taste taste) {
        start();
        for (int mat = 0; mat < ground.mats; mat++) {
            look(ask, mat, taste);
        }
        return best;
    }

    /** The best spot on some mats. */
    @Nullable
    TrialPlacement find(IndexedRequest ask, Taste taste, int[] mats, int howMany) {
        start();
        for (int i = 0; i < howMany; i++) {
            look(ask, mats[i], taste);
        }
        return best;
    }

    /** The best spot at one place of a mat. */
    @Nullable
    TrialPlacement find(IndexedRequest ask, Taste taste, int mat, int place) {
        start();
        onlyPlace = place;
        look(ask, mat, taste);
        onlyPlace = ANY;
        return best;
    }

    /** How much has been looked at so far: a measure of effort that does not depend on the machine. */
    long work() {
        return work;
    }

    private void start() {
        best = null;
        bestCost = Double.MAX_VALUE;
    }

    private void look(IndexedRequest ask, int mat, Taste taste) {
        if (!ground.sees(ask, mat)) {
            return;
        }
        for (StayOption way : ask.ways()) {
            int last = Math.min(ask.latest(), ground.days - way.days());
            if (last < ask.earliest()) {
                continue;
            }
            int end = last + way.days();
            int lastBad = ask.earliest() - 1;
            work += 1 + (end - ask.earliest()) / 4;
            for (int day = ask.earliest(); day < end; day++) {
                if (!layout.bears(mat, day, way.degrees())
                        && !(anyCurrent && layout.circuitIsFull(mat, day, way.degrees()))) {
                    lastBad = day;
                }
                int from = day - way.days() + 1;
                if (from > lastBad && from >= ask.earliest()) {
                    lookAt(ask, mat, way, from, taste);
                }
            }
        }
    }

    private void lookAt(IndexedRequest ask, int mat, StayOption way, int from, Taste taste) {
        double cost = taste.shift() * Math.abs(from - ask.ideal())
                + taste.slow() * ask.quarters() * (way.days() - ask.ways()[0].days());
        if (cost >= bestCost) {
            return;
        }
        int to = from + way.days();
        if (taste.warm() > 0) {
            cost += taste.warm() * newlyWarm(mat, from, to);
        }
        work += ground.places[mat];
        for (int place = 0; place < ground.places[mat]; place++) {
            int busy = onlyPlace == ANY || onlyPlace == place ? layout.occupancy.busy(mat, place, from, to) : 15;
            if (busy == 15 || (busy != 0 && ask.quarters() == 4)) {
                continue;
            }
            int before = from == 0 ? 15 : layout.occupancy.busy(mat, place, from - 1, from);
            int after = to == ground.days ? 15 : layout.occupancy.busy(mat, place, to, to + 1);
            for (int mask : MASKS[ask.quarters()]) {
                if ((busy & mask) == 0) {
                    int gaps = 2 * ask.quarters() - Integer.bitCount(before & mask) - Integer.bitCount(after & mask);
                    double full = cost + taste.gap() * gaps + taste.breakage() * BREAKAGE[busy][mask];
                    consider(ask, TrialPlacement.onMat(mat, place, mask, from, to, way.degrees()), full, taste);
                }
            }
        }
    }

    private void consider(IndexedRequest ask, TrialPlacement spot, double cost, Taste taste) {
        double full = taste.noise() > 0 ? cost + taste.noise() * random.nextDouble() : cost;
        if (full < bestCost) {
            TrialPlacement lit = withLight(ask, spot);
            if (lit != null) {
                bestCost = full;
                best = lit;
            }
        }
    }

    /** The spot with a lit place after it, where one is asked for; null when there is none. */
    private @Nullable TrialPlacement withLight(IndexedRequest ask, TrialPlacement spot) {
        if (ask.light() == null || spot.to() >= ground.days) {
            return spot;
        }
        int until = Math.min(ground.days, spot.to() + ask.light().days());
        TrialPlacement found = null;
        int leastBroken = Integer.MAX_VALUE;
        for (int surface = ground.mats; surface < ground.places.length; surface++) {
            for (int place = 0; place < ground.places[surface]; place++) {
                int busy = layout.occupancy.busy(surface, place, spot.to(), until);
                for (int mask : MASKS[ask.light().quarters()]) {
                    if ((busy & mask) == 0 && BREAKAGE[busy][mask] < leastBroken) {
                        leastBroken = BREAKAGE[busy][mask];
                        found = spot.then(surface, place, mask, until);
                    }
                }
            }
        }
        return found;
    }

    private int newlyWarm(int mat, int from, int to) {
        int days = 0;
        for (int day = from; day < to; day++) {
            days += layout.isWarm(mat, day) ? 0 : 1;
        }
        return days;
    }

    /** How much room for whole trays and half trays goes when quarters are taken. */
    private static int[][] breakage() {
        int[][] table = new int[16][16];
        for (int busy = 0; busy < 16; busy++) {
            for (int mask = 0; mask < 16; mask++) {
                table[busy][mask] = pieces(busy) - pieces(busy | mask);
            }
        }
        return table;
    }

    private static int pieces(int busy) {
        return ((busy & 3) == 0 ? 1 : 0) + ((busy & 12) == 0 ? 1 : 0) + (busy == 0 ? 2 : 0);
    }
}
