package warmshelf.crop;

import java.util.Optional;

/**
 * One sowing's emergence held against what the published figures alone would have told, before anything was learned here.
 *
 * @param publishedDays for half of a sowing of seedlings at its temperature
 * @param seenDays the same as seen, roots in a bag put on the scale of seedlings
 * @param standardized the logarithm of the one over the other in units of what was expected to lie between them: the group around
 *     the table, a lot around the group, a sowing around its lot, and what is not known for want of looks
 */
public record EmergenceCheck(double publishedDays, double seenDays, double standardized) {
    /** Empty where nothing is published for the temperature it lay at. */
    public static Optional<EmergenceCheck> of(TemperatureResponse published, SeenEmergence seen) {
        return published.at(seen.celsius()).map(table -> {
            double shift = Math.log(seen.seedlingDays() / table.days());
            double expected = Math.sqrt(LearnedEmergence.UNSEEN_VARIANCE + seen.lookingVariance());
            return new EmergenceCheck(table.days(), seen.seedlingDays(), shift / expected);
        });
    }
}
