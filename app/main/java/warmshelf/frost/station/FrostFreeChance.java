package warmshelf.frost.station;

import java.util.function.IntToDoubleFunction;

/**
 * The chance that no night of a run of nights has a frost, when each night is normal and hands on a share of its stray to the
 * next (a first-order autoregression). The stray is followed over a grid of values from night to night, so that no random
 * numbers are needed.
 */
final class FrostFreeChance {
    private static final int VALUES = 31;
    private static final double WIDEST = 3.75;
    private static final double STEP = 2 * WIDEST / (VALUES - 1);
    private static final double[][] NEXT = next();

    private FrostFreeChance() {}

    /**
     * The chance that the first night, the first two, and so on have no frost.
     *
     * @param frostAt night 0, 1, ... to the stray, in standard deviations, at or below which that night has a frost
     */
    static double[] of(int nights, IntToDoubleFunction frostAt) {
        double[] chances = new double[nights];
        double[] strays = normal();
        for (int night = 0; night < nights; night++) {
            if (night > 0) {
                strays = onward(strays);
            }
            double threshold = frostAt.applyAsDouble(night);
            double chance = 0;
            for (int i = 0; i < VALUES; i++) {
                strays[i] *= shareAbove(i, threshold);
                chance += strays[i];
            }
            chances[night] = chance;
        }
        return chances;
    }

    private static double value(int i) {
        return i * STEP - WIDEST;
    }

    /** The share of a value's own stretch that lies above a threshold. */
    private static double shareAbove(int i, double threshold) {
        return Math.min(1, Math.max(0, (value(i) + STEP / 2 - threshold) / STEP));
    }

    private static double[] normal() {
        double[] shares = new double[VALUES];
        for (int i = 0; i < VALUES; i++) {
            shares[i] = Math.exp(-value(i) * value(i) / 2);
        }
        return scaled(shares);
    }

    private static double[][] next() {
        double variance = 1 - NightSpread.PERSISTENCE * NightSpread.PERSISTENCE;
        double[][] next = new double[VALUES][VALUES];
        for (int from = 0; from < VALUES; from++) {
            for (int to = 0; to < VALUES; to++) {
                double stray = value(to) - NightSpread.PERSISTENCE * value(from);
                next[from][to] = Math.exp(-stray * stray / (2 * variance));
            }
            next[from] = scaled(next[from]);
        }
        return next;
    }

    private static double[] scaled(double[] shares) {
        double total = 0;
        for (double share : shares) {
            total += share;
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= total;
        }
        return shares;
    }

    private static double[] onward(double[] strays) {
        double[] next = new double[VALUES];
        for (int from = 0; from < VALUES; from++) {
            double share = strays[from];
            if (share > 0) {
                for (int to = 0; to < VALUES; to++) {
                    next[to] += share * NEXT[from][to];
                }
            }
        }
        return next;
    }
}
