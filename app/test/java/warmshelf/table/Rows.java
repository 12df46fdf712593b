package warmshelf.table;

import java.util.function.Consumer;

/** Takes rows that all have as many cells as they should. */
record Rows(Consumer<TableRow> each) implements TableFile.Visit {
    @Override
    public void row(TableRow row, int permille) {
        each.accept(row);
    }

    @Override
    public void tooManyCells(long number, int cells, int columns) {
        throw new AssertionError("row %d has %d cells".formatted(number, cells));
    }
}
