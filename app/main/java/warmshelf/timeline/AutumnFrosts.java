package warmshelf.timeline;

import warmshelf.crop.Hardiness;
import warmshelf.frost.FirstFrost;

/**
 * When one autumn's first frosts come.
 *
 * @param frost the first night of 0 °C
 * @param killing the first night of -2.2 °C
 */
public record AutumnFrosts(FirstFrost frost, FirstFrost killing) {

    /**
     * The first frost that kills a class of crops. The US weather service calls 0 to -1.7 °C a light freeze, which kills tender
     * plants, -2.2 to -3.9 °C a moderate one, which harms most vegetation, and -4.4 °C and less a severe one, which harms
     * nearly all. Hardened hardy crops bear the moderate one; the severe one is taken to come as many days after it as it
     * comes after 0 °C, the three lying 2.2 °C apart.
     */
    FirstFrost killing(Hardiness hardiness) {
        return switch (hardiness) {
            case VERY_TENDER, TENDER -> frost;
            case HALF_HARDY -> killing;
            case HARDY ->
                killing.laterBy(killing.season().medianDay() - frost.season().medianDay());
        };
    }
}
