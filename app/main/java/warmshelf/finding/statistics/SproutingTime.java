package warmshelf.finding.statistics;

/**
 * When one seed sprouted, as far as looking tells: after one look and by another. Days since sowing.
 *
 * @param after the last look at which it had not sprouted; the day itself where that is known exactly
 * @param by the first look at which it had; infinite where it had not by the last look
 */
public record SproutingTime(double after, double by) {
    public SproutingTime {
        if (!(after >= 0) || !(by >= after) || Double.isInfinite(after)) {
            throw new IllegalArgumentException("sprouted after %s and by %s days".formatted(after, by));
        }
    }

    /** Sprouted between two looks, that is in (after, by]. */
    public static SproutingTime between(double after, double by) {
        if (!(by > after)) {
            throw new IllegalArgumentException("no time lies after %s and by %s days".formatted(after, by));
        }
        return new SproutingTime(after, by);
    }

    /** Sprouted at a moment that is known. */
    public static SproutingTime at(double day) {
        return new SproutingTime(day, day);
    }

    /** Not sprouted by the last look, whatever came later. */
    public static SproutingTime notBy(double day) {
        return new SproutingTime(day, Double.POSITIVE_INFINITY);
    }

    /** Whether it was seen to have sprouted. */
    public boolean sprouted() {
        return !Double.isInfinite(by);
    }

    /** The middle between the two looks, for those that sprouted. */
    public double middle() {
        return (after + by) / 2;
    }

    boolean exact() {
        return after == by;
    }
}
