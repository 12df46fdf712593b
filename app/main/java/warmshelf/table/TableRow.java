package warmshelf.table;

import java.util.Map;

/**
 * A row of a table that somebody sent.
 *
 * @param number as a spreadsheet numbers it: the row with the names is 1
 * @param cells by the name of their column, without the spaces around them; only columns that are known
 */
public record TableRow(long number, Map<String, String> cells) {
    /** The cell of a column; empty also where the table has no such column. */
    public String cell(String column) {
        return cells.getOrDefault(column, "");
    }
}
