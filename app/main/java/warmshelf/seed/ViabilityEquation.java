package warmshelf.seed;

import warmshelf.seed.StorageKind.Conditions;

/**
 * How long seed of a species lives, by the equation of Ellis and Roberts (1980):
 *
 * <pre>v = Ki - p / 10^(KE - CW log10 m - CH t - CQ t²)</pre>
 *
 * with v the viability in probits after p days, Ki that at the start, m the seed's moisture in % of its fresh weight and t the
 * temperature in °C, both constant.
 *
 * @param species for which the constants were measured
 * @param source where they were published
 */
public record ViabilityEquation(
        String species, double ke, double cw, double ch, double cq, String source, String sourceUrl) {
    static final double DAYS_A_YEAR = 365.25;

    /** The days in which one probit is lost. */
    public double daysToLoseOneProbit(Conditions kept) {
        double celsius = kept.celsius();
        return Math.pow(10, ke - cw * Math.log10(kept.moisturePercent()) - ch * celsius - cq * celsius * celsius);
    }

    /** The probits lost after some years. */
    public double loss(double years, Conditions kept) {
        return years * DAYS_A_YEAR / daysToLoseOneProbit(kept);
    }

    /** The share alive after some days. */
    public double after(double initialShare, double days, Conditions kept) {
        return Probits.share(Probits.of(initialShare) - days / daysToLoseOneProbit(kept));
    }

    /** The days until half is dead; 0 where it is so at the start. */
    public double halfLifeDays(double initialShare, Conditions kept) {
        return Math.max(0, Probits.of(initialShare) * daysToLoseOneProbit(kept));
    }
}
