package warmshelf.crop;

import java.time.OffsetDateTime;
import java.util.Locale;
import warmshelf.crop.Crop.DaysToMaturity;

/**
 * A variety of which somebody knows how soon it bears.
 *
 * @param maturity days to the first harvest, which count instead of the crop's
 * @param source where they stand, such as 'the packet'
 * @param by the name of who wrote it
 */
public record Variety(
        String cropId, String name, DaysToMaturity maturity, String source, int version, String by, OffsetDateTime at) {

    /** What makes two spellings of a name the same one: capitals and spaces do not count. */
    public static String key(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
