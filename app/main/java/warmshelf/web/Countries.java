package warmshelf.web;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The countries of ISO 3166, for choosing one in a form. */
public final class Countries {
    /** A country's two letters and its English name. */
    public record Country(String value, String words) {}

    private static final List<Country> BY_NAME = Arrays.stream(Locale.getISOCountries())
            .map(code -> new Country(code, new Locale("", code).getDisplayCountry(Locale.ENGLISH)))
            .sorted(Comparator.comparing(Country::words))
            .toList();

    private Countries() {}

    public static List<Country> byName() {
        return BY_NAME;
    }

    public static Set<String> codes() {
        return Set.of(Locale.getISOCountries());
    }
}
