package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.util.List;
import java.util.Optional;
import warmshelf.frost.garden.PointForm;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads where a station lies: latitude, longitude and height in the reader's own unit. */
final class PlaceForm {
    static final List<String> FIELDS = List.of("latitude", "longitude", "elevation");

    private PlaceForm() {}

    /** The place, or a sentence beside each field that cannot be used. */
    static TypedPlace required(FormReader reader, Units units) {
        double latitude = reader.decimal("latitude", SAY.latitude(), -90, 90);
        double longitude = reader.decimal("longitude", SAY.longitude(), -180, 180);
        return new TypedPlace(latitude, longitude, PointForm.elevationM(reader, SAY.height(), units));
    }

    /** The place where anything of it was typed. */
    static Optional<TypedPlace> optional(FormReader reader, Units units) {
        return FIELDS.stream().allMatch(field -> reader.text(field).isEmpty())
                ? Optional.empty()
                : Optional.of(required(reader, units));
    }
}
