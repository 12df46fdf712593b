/**
 * The whole group in one file, and the group taken in from it.
 *
 * <p>The file is a zip. {@code data/TABLE.jsonl} holds the rows of each table of the group, one JSON object a line; it alone is
 * taken in, because JSON tells an empty text from nothing and a spreadsheet never alters it. {@code tables/TABLE.csv} says the
 * same to people and other programs, made safe against formulas. {@code photos/} holds the pictures, {@code dictionary.*} what
 * each column means, {@code manifest.json} the versions and counts, {@code checksums.sha256} the SHA-256 of each other part.
 *
 * <p>{@code TableOwnership} says which tables travel, {@code SchemaStore} in which order and form. A database
 * ({@code RowStore}) and a file ({@code ArchiveFile}) give rows in the same way ({@code RowSource}), so that
 * {@code TakingInStore} fills a database from either, and reads back what it wrote before it commits.
 *
 * <p>{@code GroupMoveStore} moves an installation whole from one database to another with the same pieces: all tables instead of the
 * group's.
 *
 * <p>Whoever takes a group in replaces what is there. No page does: it is done by command, on the machine itself.
 */
package warmshelf.archive;
