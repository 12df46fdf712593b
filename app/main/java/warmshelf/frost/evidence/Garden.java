package warmshelf.frost.evidence;

import java.util.OptionalDouble;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The place that frost dates are wanted for.
 *
 * @param elevationM metres above the sea; empty where a table of postcodes does not tell it
 * @param exact whether the point was typed in, rather than being the middle of a postcode
 * @param memberId whose garden it is; null: no one's in particular
 * @param postcode country and code, for corrections of an area; null where only a point is known
 */
public record Garden(
        String name,
        double latitude,
        double longitude,
        OptionalDouble elevationM,
        boolean exact,
        @Nullable UUID memberId,
        @Nullable Postcode postcode) {

    /** A postcode as stored: the country in two capitals, the code as typed. */
    public record Postcode(String country, String code) {}
}
