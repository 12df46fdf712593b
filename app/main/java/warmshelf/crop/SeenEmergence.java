package warmshelf.crop;

import java.util.OptionalDouble;
import java.util.UUID;

/**
 * The day by which half of what came up of one sowing had come, known only to lie between two looks.
 *
 * @param celsius the temperature it lay at
 * @param afterDays days from sowing to the last look at which fewer had come
 * @param byDays days from sowing to the first look at which half had
 * @param method in a bag roots are counted, in cells seedlings
 */
public record SeenEmergence(UUID sowingId, UUID lotId, Method method, double celsius, double afterDays, double byDays) {
    // Seed that nobody looked at early: if the look that found it was as late as the last twentieth comes, half had
    // come at the median, which is this part of that time.
    private static final double EARLIEST = 1 / EmergenceSpread.LAST;

    public SeenEmergence {
        if (!(byDays > 0) || afterDays >= byDays) {
            throw new IllegalArgumentException("seen after %s and by %s days".formatted(afterDays, byDays));
        }
    }

    /** The days as counted: the middle between the two looks, on the scale of logarithms. */
    public double days() {
        return Math.sqrt(earliest() * byDays);
    }

    /** The days as seedlings in cells would have needed: roots in a bag show sooner. */
    public double seedlingDays() {
        return method == Method.BAG ? days() / Emergence.ROOT_SHOWS_AT : days();
    }

    /** The logarithm of these days over the published ones; empty where nothing is published for that temperature. */
    OptionalDouble shift(TemperatureResponse published) {
        // Days that were only reckoned are no table to be held against.
        return published
                .at(celsius)
                .filter(table -> published.timed().contains(celsius))
                .map(table -> OptionalDouble.of(Math.log(seedlingDays() / table.days())))
                .orElse(OptionalDouble.empty());
    }

    /** How uncertain that logarithm is for want of looks: anything between the two is as likely. */
    double lookingVariance() {
        double width = Math.log(byDays / earliest());
        return width * width / 12;
    }

    private double earliest() {
        return Math.max(afterDays, EARLIEST * byDays);
    }
}
