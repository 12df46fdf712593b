package warmshelf.table;

import static warmshelf.table.TableSentences.SAY;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import warmshelf.BadInput;
import warmshelf.Given;

/**
 * The row that names the columns of a table that somebody sent.
 *
 * @param names as they are compared
 * @param given as the file has them
 * @param known how many of them are known
 */
public record TableHeading(List<String> names, List<String> given, int known) {
    static final TableHeading NONE = new TableHeading(List.of(), List.of(), -1);

    static TableHeading of(CSVRecord row, TableColumns columns) {
        List<String> given = new ArrayList<>();
        row.forEach(cell -> given.add(cell.strip()));
        while (given.get(given.size() - 1).isEmpty()) {
            given.remove(given.size() - 1);
        }
        List<String> names = given.stream().map(TableColumns::plain).toList();
        int known = (int) names.stream().filter(columns::knows).distinct().count();
        return new TableHeading(names, List.copyOf(given), known);
    }

    /** Whether it is likelier to be read with the right separator. */
    boolean isBetterThan(TableHeading other) {
        return known > other.known || (known == other.known && names.size() > other.names.size());
    }

    /** Whether the table has a column. */
    public boolean has(String column) {
        return names.contains(column);
    }

    void refuseUnfit(TableColumns columns) {
        String accepted = columns.all().collect(Collectors.joining(", "));
        for (List<String> oneOf : columns.needed()) {
            if (oneOf.stream().noneMatch(names::contains)) {
                throw new BadInput(
                        SAY.columnMissing(String.join(" / ", oneOf), Given.shown(String.join(", ", given)), accepted));
            }
        }
        Set<String> met = new LinkedHashSet<>();
        for (String name : names) {
            if (columns.knows(name) && !met.add(name)) {
                throw new BadInput(SAY.columnTwice(name));
            }
        }
    }

    List<String> unknown(TableColumns columns) {
        List<String> unknown = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (!columns.knows(names.get(i))) {
                unknown.add(given.get(i).isEmpty() ? String.valueOf(i + 1) : Given.shown(given.get(i)));
            }
        }
        return unknown;
    }

    Map<String, String> cells(CSVRecord row) {
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < Math.min(names.size(), row.size()); i++) {
            cells.put(names.get(i), FormulaGuard.unguarded(row.get(i)).strip());
        }
        return cells;
    }
}
