package warmshelf.frost;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to say when a postcode is not in the table. */
final class UnknownPostcode {
    private static final int SHOWN = 20;

    private UnknownPostcode() {}

    /** For a page, which lists similar postcodes and the fields for a point itself. */
    static String shortSentence(String country, String code) {
        return isUnitedStates(country)
                ? "There is no postcode '%s'; pick a similar one, or give latitude, longitude and elevation."
                        .formatted(shortened(code))
                : "The postcode '%s' of '%s' is not known here: a coordinator can bring in that country’s table of postcodes, or give latitude, longitude and elevation."
                        .formatted(shortened(code), shortened(country));
    }

    /** For a command, which has nothing but the sentence. */
    static String sentence(String country, String code) {
        if (!isUnitedStates(country)) {
            return otherCountry(country);
        }
        List<PostcodePlace> similar = Postcodes.bundled().similarTo(code);
        String offer = similar.isEmpty()
                ? "a US postcode has five digits"
                : "similar ones are "
                        + similar.stream().map(PostcodePlace::name).collect(Collectors.joining("; "));
        return "There is no postcode '%s'; %s. Latitude, longitude and elevation are accepted too."
                .formatted(shortened(code), offer);
    }

    static boolean isUnitedStates(String country) {
        return country.strip().toUpperCase(Locale.ROOT).equals(Postcodes.UNITED_STATES);
    }

    private static String otherCountry(String country) {
        return "Postcodes of '%s' are not known here, only those of US; give latitude, longitude and elevation instead."
                .formatted(shortened(country));
    }

    private static String shortened(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
