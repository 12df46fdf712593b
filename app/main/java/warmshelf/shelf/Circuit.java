package warmshelf.shelf;

/**
 * The electrical circuit that feeds a site.
 *
 * @param amps rating of its breaker
 * @param volts nominal voltage
 */
public record Circuit(double amps, int volts) {
    // Heat mats and lights run for hours on end. The usual US planning rule for such continuous loads (three hours or
    // more) is 80 % of the breaker's rating, after NFPA 70 (NEC) 210.20(A); other countries have their own rules.
    private static final double CONTINUOUS_SHARE = 0.8;
    private static final double LEAST_AMPS = 0.001;

    public Circuit {
        if (amps <= 0 || volts <= 0) {
            throw new IllegalArgumentException("amps and volts must be above 0, were %s and %d".formatted(amps, volts));
        }
    }

    public int ratedWatts() {
        return (int) Math.floor(amps * volts);
    }

    /** The most watts to plan for things that run for hours. */
    public int continuousWatts() {
        return (int) Math.floor(amps * volts * CONTINUOUS_SHARE + 1e-9);
    }

    /** What is left of it for other things that run for hours, beside some that take so many watts. */
    public Circuit without(int watts) {
        double left = amps - watts / (CONTINUOUS_SHARE * volts);
        return new Circuit(Math.max(LEAST_AMPS, left), volts);
    }
}
