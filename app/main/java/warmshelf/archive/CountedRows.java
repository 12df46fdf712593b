package warmshelf.archive;

import org.jspecify.annotations.Nullable;

/** Counts the rows of a table that it is shown, and keeps the highest number that the database counted up. */
final class CountedRows implements RowSource.Visitor {
    private final int counted;
    private long rows;
    private long lastCounted;

    CountedRows(ArchiveTable table) {
        this.counted = table.counted().map(column -> table.place(column.name())).orElse(-1);
    }

    @Override
    public void row(@Nullable Object[] row) {
        rows++;
        if (counted >= 0 && row[counted] instanceof Long number) {
            lastCounted = Math.max(lastCounted, number);
        }
    }

    long rows() {
        return rows;
    }

    long lastCounted() {
        return lastCounted;
    }
}
