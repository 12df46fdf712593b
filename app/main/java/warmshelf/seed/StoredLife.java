package warmshelf.seed;

import warmshelf.crop.Crop;
import warmshelf.seed.StorageKind.Conditions;
import warmshelf.words.TemperatureUnit;

/**
 * The usual life of a crop's seed in good storage, and how its viability falls off with it: for the first year, or half its life
 * where that is shorter, as a fresh packet; then down to the legal minimum at the end of its life; from then on by one probit
 * for each further life.
 *
 * <p>The lives are those of Knott's Handbook as printed by Iowa State University Extension (1999). That they end at the legal
 * minimum, and the slope after, are ours and on the cautious side: for pepper 1.6 probits in four years, where the published
 * constants give 1.56 at 7 % moisture and 20 °C, and beans were half alive after 21 years in a dry room (Nagel and Börner, 2009).
 *
 * @param years in good storage
 * @param toMinimum probits from what a fresh packet may be expected to do to the legal minimum
 */
record StoredLife(double years, double toMinimum) {
    /** No storage is believed to keep seed longer than this many usual lives; rules of thumb shorten it no more either. */
    static final int AT_MOST_TIMES = 3;
    // Where no source gives a life: our assumption, the commonest figure of the crop table being four.
    private static final int USUAL_YEARS = 3;
    private static final Conditions GOOD = StorageKind.CUPBOARD.conditions().orElseThrow();
    private static final double CELSIUS_THAT_DOUBLE = TemperatureUnit.FAHRENHEIT.differenceToCelsius(10);

    static StoredLife of(Crop crop) {
        Integer life = crop.seedLifeYears();
        return new StoredLife(
                life == null ? USUAL_YEARS : Math.max(1, life),
                Probits.of(FreshSeed.packetMean(crop)) - Probits.of(FreshSeed.minimum(crop)));
    }

    StoredLife times(double factor) {
        return new StoredLife(years * factor, toMinimum);
    }

    /**
     * Harrington's rules of thumb, against a cool and dry cupboard: each 1 % less moisture, and each 10 °F less warmth, doubles
     * the life. They are said to hold from 5 to 14 % and from 0 to 50 °C; outside, the nearer end counts.
     */
    StoredLife keptAt(Conditions kept) {
        double drier = GOOD.moisturePercent() - Math.min(14, kept.moisturePercent());
        double cooler = (GOOD.celsius() - Math.max(0, kept.celsius())) / CELSIUS_THAT_DOUBLE;
        double times = Math.pow(2, drier + cooler);
        return times(Math.max(1.0 / AT_MOST_TIMES, Math.min(AT_MOST_TIMES, times)));
    }

    /** The probits lost after some years. */
    double loss(double after) {
        double ageing = (after - fresh()) / (years - fresh());
        return toMinimum * Math.max(0, Math.min(1, ageing)) + Math.max(0, after - years) / years;
    }

    /** The years in which so many probits are lost. */
    double yearsToLose(double probits) {
        return probits <= toMinimum
                ? fresh() + (years - fresh()) * probits / toMinimum
                : years * (1 + probits - toMinimum);
    }

    private double fresh() {
        return Math.min(1, years / 2);
    }
}
