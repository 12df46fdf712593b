package warmshelf.crop;

import java.util.OptionalDouble;

/**
 * How early the first and how late the last seeds come up around the day the trials give. The trials print one day only, so
 * the spread is log-normal on each side of it and calibrated on the trade's rule for the best-known slow crop: peppers at
 * 24-27 C come up in one to two weeks (common practice), where the trials say 8 days. So the first twentieth is expected at
 * 7/8 and all but the last twentieth at 14/8 of the trial's day; the log standard deviations are ln(8/7)/1.645 = 0.08 before
 * and ln(14/8)/1.645 = 0.34 after it. The late side is the wider one because real seed, mats and thermometers are worse
 * than a trial's. The same two factors put tomatoes at 25 C between 5 and 11 days and lettuce between 2 and 4, as usual.
 */
final class EmergenceSpread {
    private static final double FIRST = 7.0 / 8;
    /** How many times the published day the last twentieth takes. */
    static final double LAST = 14.0 / 8;

    private EmergenceSpread() {}

    static Emergence around(double days, OptionalDouble normalShare) {
        return new Emergence(days, FIRST * days, LAST * days, normalShare);
    }
}
