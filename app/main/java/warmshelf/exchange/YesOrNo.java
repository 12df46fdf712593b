package warmshelf.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How tables write yes and no. */
final class YesOrNo {
    private static final List<String> YES = List.of("true", "yes", "y", "x", "1", "wahr", "ja", "vrai", "oui");
    private static final List<String> NO = List.of("false", "no", "n", "0", "falsch", "nein", "faux", "non");

    private YesOrNo() {}

    /** What a cell says; empty where it says neither. */
    static Optional<Boolean> read(String cell) {
        String text = cell.toLowerCase(Locale.ROOT);
        if (YES.contains(text)) {
            return Optional.of(true);
        }
        return NO.contains(text) ? Optional.of(false) : Optional.empty();
    }
}
