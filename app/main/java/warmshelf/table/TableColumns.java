package warmshelf.table;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The columns that a table may have.
 *
 * @param needed of each list one
 * @param optional what may be missing
 */
public record TableColumns(List<List<String>> needed, List<String> optional) {
    boolean knows(String name) {
        return all().anyMatch(name::equals);
    }

    /** All their names, those needed first. */
    public Stream<String> all() {
        return Stream.concat(needed.stream().flatMap(List::stream), optional.stream());
    }

    /** A name as it is compared: 'Seeds left ' is 'seeds_left'. */
    static String plain(String heading) {
        return FormulaGuard.unguarded(heading).strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
    }
}
