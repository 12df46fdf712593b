package warmshelf.archive;

/**
 * A column of a table.
 *
 * @param secret tables for people leave it out
 * @param counted the database counts it up, in the order in which rows are kept
 * @param ofOwnTable it names another row of the same table
 */
record ArchiveColumn(
        String name, ColumnKind kind, boolean mayBeEmpty, boolean secret, boolean counted, boolean ofOwnTable) {}
