package warmshelf.member;

import java.util.Locale;
import warmshelf.web.Countries;
import warmshelf.web.FormReader;

/** Which countries and postcodes are accepted. */
public final class PostcodeRule {
    private PostcodeRule() {}

    public static String readCountry(FormReader form, String field) {
        String country = form.text(field).toUpperCase(Locale.ROOT);
        if (!Countries.codes().contains(country)) {
            form.refuse(field, "Country is not filled in; please choose one from the list.");
        }
        return country;
    }

    public static String readPostcode(FormReader form, String field, String label, String country) {
        String code = form.requiredText(field, label, 12).toUpperCase(Locale.ROOT);
        if (!code.matches("[A-Z0-9][A-Z0-9 -]*")) {
            form.refuse(field, "%s was '%s'; letters, digits, spaces and hyphens are accepted.".formatted(label, code));
        }
        return code;
    }
}
