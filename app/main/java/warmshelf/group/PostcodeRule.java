package warmshelf.group;

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
            form.refuse(field, "Country is not filled in; please choose one from the list.");
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
                form.refuse(
                        field, "%s was '%s'; letters, digits, spaces and hyphens are accepted.".formatted(label, code));
            }
            return code;
        }
        return Postcodes.bundled().find(country, code).map(PostcodePlace::code).orElseGet(() -> {
            form.refuse(
                    field,
                    "%s was '%s', which is not one of the United States; %s.".formatted(label, code, similar(code)));
            return code;
        });
    }

    private static String similar(String code) {
        List<PostcodePlace> similar = Postcodes.bundled().similarTo(code);
        return similar.isEmpty()
                ? "five digits are accepted"
                : "similar ones are "
                        + similar.stream().map(PostcodePlace::name).collect(Collectors.joining("; "));
    }
}
