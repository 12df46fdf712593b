package warmshelf.finding.statistics;

/**
 * One step of the iterative convex minorant (Groeneboom and Wellner 1992): Newton's step for each cumulative share by itself, then
 * made to rise by pooling neighbours that would fall (isotonic regression).
 */
final class ConvexMinorant {
    private ConvexMinorant() {}

    /**
     * @param shares of the innermost intervals; their sum is 1
     * @param first the first innermost interval that agrees with each observation
     * @param last the last of them
     * @param seeds how many seeds were observed so
     */
    static double[] step(double[] shares, int[] first, int[] last, int[] seeds) {
        int free = shares.length - 1; // the last cumulative share is 1
        double[] cumulative = new double[shares.length];
        double sum = 0;
        for (int j = 0; j < shares.length; j++) {
            sum += shares[j];
            cumulative[j] = sum;
        }
        double[] slope = new double[free];
        double[] curvature = new double[free];
        for (int i = 0; i < seeds.length; i++) {
            double below = first[i] == 0 ? 0 : cumulative[first[i] - 1];
            double chance = Math.max(1e-12, cumulative[last[i]] - below);
            if (last[i] < free) {
                slope[last[i]] += seeds[i] / chance;
                curvature[last[i]] += seeds[i] / (chance * chance);
            }
            if (first[i] > 0) {
                slope[first[i] - 1] -= seeds[i] / chance;
                curvature[first[i] - 1] += seeds[i] / (chance * chance);
            }
        }
        double[] wanted = new double[free];
        for (int j = 0; j < free; j++) {
            wanted[j] = cumulative[j] + slope[j] / curvature[j];
        }
        return differences(rising(wanted, curvature));
    }

    /** The rising sequence nearest to the wanted one, by weighted squares: pool adjacent violators. */
    static double[] rising(double[] wanted, double[] weight) {
        double[] level = new double[wanted.length];
        double[] mass = new double[wanted.length];
        int[] width = new int[wanted.length];
        int blocks = 0;
        for (int j = 0; j < wanted.length; j++) {
            level[blocks] = wanted[j];
            mass[blocks] = weight[j];
            width[blocks++] = 1;
            while (blocks > 1 && level[blocks - 2] >= level[blocks - 1]) {
                double both = mass[blocks - 2] + mass[blocks - 1];
                level[blocks - 2] =
                        (level[blocks - 2] * mass[blocks - 2] + level[blocks - 1] * mass[blocks - 1]) / both;
                mass[blocks - 2] = both;
                width[blocks - 2] += width[--blocks];
            }
        }
        double[] rising = new double[wanted.length];
        for (int block = 0, j = 0; block < blocks; block++) {
            for (int k = 0; k < width[block]; k++) {
                rising[j++] = level[block];
            }
        }
        return rising;
    }

    private static double[] differences(double[] rising) {
        double[] shares = new double[rising.length + 1];
        double before = 0;
        for (int j = 0; j < rising.length; j++) {
            double level = Math.min(1, Math.max(0, rising[j]));
            shares[j] = level - before;
            before = level;
        }
        shares[rising.length] = 1 - before;
        return shares;
    }
}
