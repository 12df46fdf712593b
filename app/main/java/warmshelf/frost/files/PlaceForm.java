package warmshelf.frost.files;

import java.util.List;
import java.util.Optional;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads where a station lies: latitude, longitude and height in the reader's own unit. */
final class PlaceForm {
    static final List<String> FIELDS = List.of("latitude", "longitude", "elevation");
    private static final double LOWEST_M = -430;
    private static final double HIGHEST_M = 6500;

    private PlaceForm() {}

    /** The place, or a sentence beside each field that cannot be used. */
    static TypedPlace required(FormReader reader, Units units) {
        boolean feet = units.inInches();
        double perMetre = feet ? 1 / Units.METRES_PER_FOOT : 1;
        double latitude = reader.decimal("latitude", "Latitude", -90, 90);
        double longitude = reader.decimal("longitude", "Longitude", -180, 180);
        double elevation = reader.decimal(
                "elevation",
                feet ? "Height in feet" : "Height in metres",
                Math.ceil(LOWEST_M * perMetre),
                Math.floor(HIGHEST_M * perMetre));
        return new TypedPlace(latitude, longitude, elevation / perMetre);
    }

    /** The place where anything of it was typed. */
    static Optional<TypedPlace> optional(FormReader reader, Units units) {
        return FIELDS.stream().allMatch(field -> reader.text(field).isEmpty())
                ? Optional.empty()
                : Optional.of(required(reader, units));
    }
}
