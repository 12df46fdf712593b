package warmshelf.archive;

import java.util.List;
import java.util.Optional;

/**
 * A table as it is written and read.
 *
 * @param ofTheGroup it travels with the group; else it belongs to the installation
 * @param columns in the order in which they came to be
 * @param key the columns that tell a row from every other
 */
record ArchiveTable(String name, boolean ofTheGroup, List<ArchiveColumn> columns, List<String> key) {

    /** The column that the database counts up, where there is one. */
    Optional<ArchiveColumn> counted() {
        return columns.stream().filter(ArchiveColumn::counted).findFirst();
    }

    /**
     * What decides the order of the rows, so that it is the same in every database: the order in which they were kept, so that one
     * that names another of its own table follows it; else the key.
     */
    List<ArchiveColumn> order() {
        return counted()
                .map(List::of)
                .orElseGet(() -> key.stream().map(this::column).toList());
    }

    /** Columns that name a row of the same table, which may follow. */
    List<ArchiveColumn> pointingAhead() {
        return counted().isPresent()
                ? List.of()
                : columns.stream().filter(ArchiveColumn::ofOwnTable).toList();
    }

    boolean hasPictures() {
        return columns.stream().anyMatch(column -> column.kind() == ColumnKind.PICTURE);
    }

    ArchiveColumn column(String name) {
        return columns.get(place(name));
    }

    /**
     * Where a column stands.
     *
     * @return -1 where there is none of that name
     */
    int place(String name) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
