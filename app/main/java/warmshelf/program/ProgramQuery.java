package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;

/** What a script asks for behind the question mark of an address. */
final class ProgramQuery {
    /** The most rows of one answer. */
    static final int MOST = 200;

    private static final int USUAL = 100;
    private static final String AFTER = "after";
    private static final String LIMIT = "limit";

    private final Map<String, List<String>> given;
    private final FormReader reader;

    /** @param known besides those that ask for a page */
    ProgramQuery(Map<String, List<String>> given, Set<String> known, boolean paged) {
        this.given = given;
        this.reader = new FormReader(given);
        Set<String> accepted = new TreeSet<>(known);
        if (paged) {
            accepted.addAll(Set.of(AFTER, LIMIT));
        }
        given.forEach((name, values) -> {
            if (!accepted.contains(name)) {
                reader.refuse(
                        name,
                        accepted.isEmpty()
                                ? SAY.nothingToAsk(name)
                                : SAY.parameterUnknown(name, String.join(", ", accepted)));
            } else if (values.size() > 1) {
                reader.refuse(name, SAY.parameterTwice(name));
            }
        });
    }

    Map<String, String> problems() {
        return reader.problems();
    }

    /** How many rows are wanted. */
    int limit() {
        return reader.optionalWholeNumber(LIMIT, LIMIT, 1, MOST).orElse(USUAL);
    }

    /** The id of the last row of the page before; null for the first page. */
    @Nullable
    UUID after() {
        String text = reader.text(AFTER);
        if (text.isEmpty()) {
            return null;
        }
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException notAnId) {
            reader.refuse(AFTER, SAY.afterUnfit());
            return null;
        }
    }

    @Nullable
    Integer season() {
        return reader.text("season").isEmpty() ? null : (Integer) reader.year("season", "season", 1900, 2200);
    }

    @Nullable
    LocalDate day(String name) {
        return reader.text(name).isEmpty() ? null : reader.date(name, name);
    }

    /** Whether everybody's is asked for rather than one's own. */
    boolean all() {
        return !reader.text("show").isEmpty()
                && reader.choice("show", "show", List.of("mine", "all")).equals("all");
    }

    /** The address of the page that begins after a row. */
    String next(String path, UUID last) {
        Map<String, String> asked = new TreeMap<>();
        given.forEach((name, values) -> asked.put(name, values.get(0)));
        asked.put(AFTER, last.toString());
        StringBuilder address = new StringBuilder(path);
        char before = '?';
        for (Map.Entry<String, String> one : asked.entrySet()) {
            address.append(before)
                    .append(one.getKey())
                    .append('=')
                    .append(URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8));
            before = '&';
        }
        return address.toString();
    }
}
