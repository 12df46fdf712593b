package warmshelf.words;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The countries of ISO 3166: two letters and the English name. */
public final class Countries {
    private static final List<Choice> BY_NAME = Arrays.stream(Locale.getISOCountries())
            .map(code -> new Choice(code, new Locale("", code).getDisplayCountry(Locale.ENGLISH)))
            .sorted(Comparator.comparing(Choice::words))
            .toList();

    private Countries() {}

    public static List<Choice> byName() {
        return BY_NAME;
    }

    public static Set<String> codes() {
        return Set.of(Locale.getISOCountries());
    }
}
