package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import warmshelf.frost.PostcodePlace;
import warmshelf.frost.Postcodes;
import warmshelf.words.Countries;
import warmshelf.words.FormReader;

/** Which countries and postcodes are accepted. */
public final class PostcodeRule {
    private static final int LONGEST = 12;

    private PostcodeRule() {}

    public static String readCountry(FormReader form, String field) {
        String country = form.text(field).toUpperCase(Locale.ROOT);
        if (!Countries.codes().contains(country)) {
            form.refuse(field, SAY.countryMissing());
        }
        return country;
    }

    /** Reads a postcode of the country. Those of the United States are known here, so a wrong one is told at once. */
    public static String readPostcode(FormReader form, String field, String label, String country) {
        String code = form.requiredText(field, label, LONGEST).toUpperCase(Locale.ROOT);
        if (code.length() > LONGEST || code.isEmpty()) {
            return code;
        }
        if (!country.equals(Postcodes.UNITED_STATES)) {
            if (!code.matches("[A-Z0-9][A-Z0-9 -]*")) {
                form.refuse(field, SAY.postcodeSigns(label, code));
            }
            return code;
        }
        return Postcodes.bundled().find(country, code).map(PostcodePlace::code).orElseGet(() -> {
            form.refuse(field, notAmerican(label, code));
            return code;
        });
    }

    private static String notAmerican(String label, String code) {
        List<PostcodePlace> similar = Postcodes.bundled().similarTo(code);
        return similar.isEmpty()
                ? SAY.notAmerican(label, code)
                : SAY.notAmericanButSimilar(
                        label, code, similar.stream().map(PostcodePlace::name).collect(Collectors.joining("; ")));
    }
}
