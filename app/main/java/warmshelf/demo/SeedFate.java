package warmshelf.demo;

import java.util.Random;
import java.util.stream.DoubleStream;
import warmshelf.crop.Emergence;

/**
 * On which day after sowing each seed of a sowing really shows: drawn around the predicted emergence, with its spread. The
 * group only ever sees counts of it.
 */
final class SeedFate {
    /** The normal quantile of nineteen twentieths, by which the prediction's first and last twentieth lie off its median. */
    private static final double Z95 = 1.645;

    private final double[] days;

    private SeedFate(double[] days) {
        this.days = days;
    }

    /**
     * Draws a fate.
     *
     * @param share of the seeds that are alive
     * @param part of the time to emergence after which it shows: 1 for seedlings, less for roots in a bag
     */
    static SeedFate draw(Random chance, int seeds, double share, Emergence expected, double part) {
        double early = Math.log(expected.days() / expected.days5()) / Z95;
        double late = Math.log(expected.days95() / expected.days()) / Z95;
        return new SeedFate(DoubleStream.generate(() -> chance.nextGaussian())
                .limit(seeds)
                .filter(z -> chance.nextDouble() < share)
                .map(z -> part * expected.days() * Math.exp(z * (z < 0 ? early : late)))
                .sorted()
                .toArray());
    }

    /** The same seeds, all sooner or later by as much as brings the first into the window. */
    SeedFate withFirstBetween(double from, double to) {
        if (days.length == 0 || (days[0] > from && days[0] <= to)) {
            return this;
        }
        double shift = (days[0] <= from ? from + 0.1 : to) - days[0];
        return new SeedFate(DoubleStream.of(days).map(day -> day + shift).toArray());
    }

    /** How many show by the evening of a day after sowing. */
    int shownBy(double day) {
        return (int) DoubleStream.of(days).filter(each -> each <= day).count();
    }

    /** The day on which the first shows; never where none is alive. */
    double first() {
        return days.length == 0 ? Double.POSITIVE_INFINITY : days[0];
    }

    /** Seeds that show sooner or later. */
    int alive() {
        return days.length;
    }
}
