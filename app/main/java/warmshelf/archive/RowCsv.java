package warmshelf.archive;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.table.TableShape;
import warmshelf.table.TableWriter;

/**
 * Writes rows for people and other programs as a table with commas. An empty text and what is not known look the same there, and
 * text that could run as a formula is changed, so it is not taken in again.
 */
final class RowCsv implements RowSource.Visitor {
    private final List<ArchiveColumn> columns;
    private final TableWriter csv;
    private final @Nullable Object[] cells;

    RowCsv(ArchiveTable table, Appendable out) throws IOException {
        this.columns = table.columns();
        List<String> shown = columns.stream()
                .filter(column -> !column.secret())
                .map(ArchiveColumn::name)
                .toList();
        this.cells = new @Nullable Object[shown.size()];
        this.csv = new TableWriter(out, TableShape.PROGRAM, shown);
    }

    @Override
    public void row(@Nullable Object[] row) throws IOException {
        int next = 0;
        for (int i = 0; i < row.length; i++) {
            if (!columns.get(i).secret()) {
                cells[next++] = row[i];
            }
        }
        csv.row(cells);
    }
}
