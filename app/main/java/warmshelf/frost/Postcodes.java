package warmshelf.frost;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The bundled postcodes of the United States. */
public final class Postcodes {
    public static final String UNITED_STATES = "US";
    private static final int MOST_SIMILAR = 6;

    private final SortedRows rows;

    private Postcodes(SortedRows rows) {
        this.rows = rows;
    }

    /** The postcodes that come with the program; read once, at first use. */
    public static Postcodes bundled() {
        return Bundled.POSTCODES;
    }

    /** The place of a postcode; spaces around it and the four digits after a hyphen do not matter. */
    public Optional<PostcodePlace> find(String country, String code) {
        if (!country.strip().toUpperCase(Locale.ROOT).equals(UNITED_STATES)) {
            return Optional.empty();
        }
        return findCode(PostcodeSuggestions.withoutExtension(code));
    }

    /** Existing postcodes that someone who typed this one may have meant, the likeliest first; at most six. */
    public List<PostcodePlace> similarTo(String code) {
        return PostcodeSuggestions.readings(code)
                .map(this::findCode)
                .flatMap(Optional::stream)
                .distinct()
                .limit(MOST_SIMILAR)
                .toList();
    }

    private Optional<PostcodePlace> findCode(String code) {
        return rows.find(row -> row[0].compareTo(code)).map(Postcodes::place);
    }

    private static PostcodePlace place(String[] row) {
        return new PostcodePlace(
                UNITED_STATES,
                row[0],
                row[1],
                row[2],
                Double.parseDouble(row[3]),
                Double.parseDouble(row[4]),
                Double.parseDouble(row[5]));
    }

    private static final class Bundled {
        static final Postcodes POSTCODES = new Postcodes(SortedRows.of("us-postcodes.csv"));
    }
}
