package warmshelf.frost;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to say when a postcode is not in the table. */
final class UnknownPostcode {
    private static final int SHOWN = 20;

    private UnknownPostcode() {}

    static String sentence(String country, String code) {
        String shown = shortened(code);
        if (!country.strip().toUpperCase(Locale.ROOT).equals(Postcodes.UNITED_STATES)) {
            return "Postcodes of '%s' are not known here, only those of US; give latitude, longitude and elevation instead."
                    .formatted(shortened(country));
        }
        List<PostcodePlace> similar = Postcodes.bundled().similarTo(code);
        String offer = similar.isEmpty()
                ? "a US postcode has five digits"
                : "similar ones are "
                        + similar.stream().map(PostcodePlace::name).collect(Collectors.joining("; "));
        return "There is no postcode '%s'; %s. Latitude, longitude and elevation are accepted too."
                .formatted(shown, offer);
    }

    private static String shortened(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
