package warmshelf.frost;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.web.FormReader;

/**
 * Where to look for frost: a postcode, or a point typed in by latitude, longitude and elevation. A point wins over a
 * postcode. With nothing typed it is the member's own postcode.
 */
public final class FrostForm {
    private static final List<String> FIELDS = List.of("postcode", "country", "latitude", "longitude", "elevation");
    private static final List<String> POINT = List.of("latitude", "longitude", "elevation");
    private static final int LONGEST_CODE = 20;
    private static final int LONGEST_COUNTRY = 2;

    private final FormReader reader;
    private final Map<String, String> typed = new LinkedHashMap<>();
    private List<PostcodePlace> similar = List.of();
    private @Nullable FrostClimate climate;

    private FrostForm(FormReader reader) {
        this.reader = reader;
        FIELDS.forEach(field -> typed.put(field, reader.typed().getOrDefault(field, "")));
    }

    /** Reads what was typed; {@code home} is where the member lives. */
    public static FrostForm of(Map<String, List<String>> query, String homeCountry, String homePostcode) {
        boolean empty = FIELDS.stream().allMatch(field -> first(query, field).isBlank());
        Map<String, List<String>> fields = new LinkedHashMap<>(query);
        if (empty) {
            fields.put("postcode", List.of(homePostcode));
        }
        if (first(query, "country").isBlank()) {
            fields.put("country", List.of(empty ? homeCountry : Postcodes.UNITED_STATES));
        }
        FrostForm form = new FrostForm(new FormReader(fields));
        form.look();
        return form;
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

    public Optional<FrostClimate> climate() {
        return Optional.ofNullable(climate);
    }

    private void look() {
        if (POINT.stream().anyMatch(field -> !reader.text(field).isEmpty())) {
            lookAtPoint();
        } else {
            lookAtPostcode();
        }
    }

    private void lookAtPoint() {
        double latitude = reader.decimal("latitude", "Latitude", -90, 90);
        double longitude = reader.decimal("longitude", "Longitude", -180, 180);
        double elevation = reader.decimal("elevation", "Elevation in metres", -430, 6500);
        if (!reader.ok()) {
            return;
        }
        climate = FrostClimates.find(latitude, longitude, elevation).orElse(null);
        if (climate == null) {
            reader.refuse("latitude", FrostClimates.nothingKnownOf(latitude, longitude));
        }
    }

    private void lookAtPostcode() {
        String code = reader.requiredText("postcode", "Postcode", LONGEST_CODE);
        String country = reader.optionalText("country", "Country", LONGEST_COUNTRY);
        if (!reader.ok()) {
            return;
        }
        Optional<PostcodePlace> place = Postcodes.bundled().find(country, code);
        if (place.isEmpty()) {
            reader.refuse("postcode", UnknownPostcode.shortSentence(country, code));
            similar = Postcodes.bundled().similarTo(code);
            return;
        }
        climate = FrostClimates.find(place.get()).orElse(null);
        if (climate == null) {
            reader.refuse(
                    "postcode",
                    FrostClimates.nothingKnownOf(
                            place.get().latitude(), place.get().longitude()));
        }
    }

    private static String first(Map<String, List<String>> query, String field) {
        List<String> values = query.getOrDefault(field, List.of());
        return values.isEmpty() ? "" : values.get(0);
    }
}
