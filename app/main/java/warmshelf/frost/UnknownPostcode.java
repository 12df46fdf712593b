package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

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
                ? SAY.noPostcode(shortened(code))
                : SAY.noPostcodeAbroad(shortened(code), shortened(country));
    }

    /** For a command, which has nothing but the sentence. */
    static String sentence(String country, String code) {
        if (!isUnitedStates(country)) {
            return SAY.postcodesOfUsOnly(shortened(country));
        }
        List<PostcodePlace> similar = Postcodes.bundled().similarTo(code);
        return similar.isEmpty()
                ? SAY.noPostcodeDigits(shortened(code))
                : SAY.noPostcodeSimilar(
                        shortened(code),
                        similar.stream().map(PostcodePlace::name).collect(Collectors.joining("; ")));
    }

    static boolean isUnitedStates(String country) {
        return country.strip().toUpperCase(Locale.ROOT).equals(Postcodes.UNITED_STATES);
    }

    private static String shortened(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
