package warmshelf.timeline;

import java.util.Map;
import java.util.Optional;
import warmshelf.crop.Crop;
import warmshelf.crop.SeedTrait;
import warmshelf.guide.Advice;
import warmshelf.guide.Figures;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** Which kinds of a crop that bulbs by the length of the day suit a latitude. */
public final class BulbKind {
    /** How far the sun goes from the equator, in degrees: the obliquity of the ecliptic. */
    private static final double FARTHEST_SUN = 23.44;
    /** Where the centre of the sun is when its rim rises, refraction counted, in degrees: as almanacs have it. */
    private static final double AT_SUNRISE = -0.833;

    private static final double HOURS = 24;

    private BulbKind() {}

    /** In a sentence; empty for a crop that does not bulb by the length of the day. */
    public static Optional<String> of(Crop crop, double latitude, Units units) {
        boolean bulbs = crop.treatment().traits().stream()
                .anyMatch(trait -> trait.kind() == SeedTrait.Kind.BULBS_BY_DAY_LENGTH);
        return bulbs ? Optional.of(sentence(Math.abs(latitude), units)) : Optional.empty();
    }

    private static String sentence(double latitude, Units units) {
        double parting = Double.parseDouble(Figures.in(units).leastNumber("day length", "latitude that parts kinds"));
        return Advice.in(units)
                .say(
                        Advice.stepFile("bulbs"),
                        latitude >= parting ? "long days" : "short days",
                        Map.of(
                                "latitude",
                                Numbers.oneDecimal(latitude),
                                "hours",
                                Numbers.oneDecimal(longestDay(latitude))));
    }

    /** The longest day of the year at a latitude, in hours from sunrise to sunset; 24 where the sun does not set then. */
    static double longestDay(double latitude) {
        double place = Math.toRadians(Math.abs(latitude));
        double sun = Math.toRadians(FARTHEST_SUN);
        double cosine = (Math.sin(Math.toRadians(AT_SUNRISE)) - Math.sin(place) * Math.sin(sun))
                / (Math.cos(place) * Math.cos(sun));
        return cosine <= -1 ? HOURS : HOURS * Math.acos(cosine) / Math.PI;
    }
}
