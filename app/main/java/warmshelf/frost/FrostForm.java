package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.evidence.Garden;
import warmshelf.frost.evidence.Gardens;
import warmshelf.frost.garden.GardenPoint;
import warmshelf.frost.garden.PointForm;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/**
 * Where to look for frost: a postcode, or a point typed in by latitude, longitude and elevation. A point wins over a
 * postcode. With nothing typed it is the member's own garden.
 */
public final class FrostForm {
    private static final List<String> FIELDS = List.of("postcode", "country", "latitude", "longitude", "elevation");
    private static final List<String> POINT = List.of("latitude", "longitude", "elevation");
    private static final int LONGEST_CODE = 20;
    private static final int LONGEST_COUNTRY = 2;

    private final FormReader reader;
    private final Map<String, String> typed = new LinkedHashMap<>();
    private List<PostcodePlace> similar = List.of();
    private @Nullable Garden garden;

    private FrostForm(FormReader reader) {
        this.reader = reader;
        FIELDS.forEach(field -> typed.put(field, reader.typed().getOrDefault(field, "")));
    }

    /**
     * Reads what was typed.
     *
     * @param home the reader's country and postcode
     * @param own the reader's own garden; null where it is not known where that lies
     * @param units in which the reader types a height
     */
    public static FrostForm of(
            Map<String, List<String>> query, Gardens gardens, Garden.Postcode home, @Nullable Garden own, Units units) {
        boolean empty = FIELDS.stream().allMatch(field -> first(query, field).isBlank());
        Map<String, List<String>> fields = new LinkedHashMap<>(query);
        if (empty) {
            fields.put("postcode", List.of(home.code()));
        }
        if (first(query, "country").isBlank()) {
            fields.put("country", List.of(home.country()));
        }
        FrostForm form = new FrostForm(new FormReader(fields));
        if (empty && own != null) {
            form.garden = own;
        } else {
            form.look(gardens, units);
        }
        return form;
    }

    /** Nothing typed yet, in the reader's own country. */
    static FrostForm blank(Garden.Postcode home) {
        return new FrostForm(new FormReader(Map.of("country", List.of(home.country()))));
    }

    public Map<String, String> typed() {
        return typed;
    }

    public Map<String, String> problems() {
        return reader.problems();
    }

    /** Existing postcodes that may have been meant. */
    public List<PostcodePlace> similar() {
        return similar;
    }

    /** The place asked for; empty where it could not be understood. */
    public Optional<Garden> garden() {
        return Optional.ofNullable(garden);
    }

    /** Says beside the fields that nothing is known of the place that was asked for. */
    void refuseUnknown(Garden place) {
        boolean byPoint = place.postcode() == null;
        reader.refuse(
                byPoint ? "latitude" : "postcode",
                SAY.stationsTellOfOthers(FrostClimates.nothingKnownOf(place.latitude(), place.longitude())));
    }

    private void look(Gardens gardens, Units units) {
        if (POINT.stream().anyMatch(field -> !reader.text(field).isEmpty())) {
            lookAtPoint(units);
        } else {
            lookAtPostcode(gardens);
        }
    }

    private void lookAtPoint(Units units) {
        GardenPoint point = PointForm.read(reader, units);
        if (reader.ok()) {
            garden = Gardens.at(point.latitude(), point.longitude(), point.elevationM());
        }
    }

    private void lookAtPostcode(Gardens gardens) {
        String code = reader.requiredText("postcode", SAY.postcode(), LONGEST_CODE);
        String country = reader.optionalText("country", SAY.country(), LONGEST_COUNTRY);
        if (!reader.ok()) {
            return;
        }
        garden = gardens.atPostcode(country, code).orElse(null);
        if (garden == null) {
            reader.refuse("postcode", UnknownPostcode.shortSentence(country, code));
            // What looks like a mistyped postcode of the United States is a good one of another country.
            similar = UnknownPostcode.isUnitedStates(country)
                    ? Postcodes.bundled().similarTo(code)
                    : List.of();
        }
    }

    private static String first(Map<String, List<String>> query, String field) {
        List<String> values = query.getOrDefault(field, List.of());
        return values.isEmpty() ? "" : values.get(0);
    }
}
