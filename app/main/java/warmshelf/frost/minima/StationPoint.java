package warmshelf.frost.minima;

import org.jspecify.annotations.Nullable;

/** What a file says of its station's name and place; elevation in metres, null where it is not told. */
public record StationPoint(
        String name,
        double latitude,
        double longitude,
        @Nullable Double elevationM) {}
