package warmshelf.plan.engine.search;

import java.util.List;

/** How much room a circuit can keep warm at once. */
final class CircuitRoom {
    private CircuitRoom() {}

    /**
     * The most quarters on mats of a group whose watts together stay within what their circuit may carry: a small knapsack,
     * bounded from above by letting the last mat be warmed in part (Dantzig 1957).
     */
    static int most(IndexedQuestion ground, Layout empty, List<Integer> group, int[] quarters, int day) {
        int circuit = ground.circuit[group.get(0)];
        int all = 0;
        for (int free : quarters) {
            all += free;
        }
        if (circuit < 0) {
            return all;
        }
        double left = ground.continuousWatts[circuit];
        double room = 0;
        boolean[] counted = new boolean[quarters.length];
        for (int i = 0; i < quarters.length; i++) {
            int mat = group.get(i);
            if (empty.isWarm(mat, day) || ground.watts[mat] == 0) {
                left -= ground.watts[mat];
                room += quarters[i];
                counted[i] = true;
            }
        }
        for (int next = roomiest(ground, group, quarters, counted);
                next >= 0 && left > 0;
                next = roomiest(ground, group, quarters, counted)) {
            double part = Math.min(1, left / ground.watts[group.get(next)]);
            room += part * quarters[next];
            left -= ground.watts[group.get(next)];
            counted[next] = true;
        }
        return (int) Math.floor(room + 1e-9);
    }

    /** The mat not yet counted with the most quarters a watt; -1 when all are counted. */
    private static int roomiest(IndexedQuestion ground, List<Integer> group, int[] quarters, boolean[] counted) {
        int best = -1;
        for (int i = 0; i < quarters.length; i++) {
            boolean better = best < 0
                    || (long) quarters[i] * ground.watts[group.get(best)]
                            > (long) quarters[best] * ground.watts[group.get(i)];
            if (!counted[i] && better) {
                best = i;
            }
        }
        return best;
    }
}
