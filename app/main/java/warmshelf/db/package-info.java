/**
 * The database: opening it, moving it forward, and what each write leaves behind.
 *
 * <p><b>Migrations</b> go forward only, run unchanged on H2 and PostgreSQL, and are never edited once released. H2
 * lets the checks that a migration makes die with the connection it ran on: {@code Database} migrates a file first
 * and opens it anew, and keeps those connections where it lies in memory. It always keeps one H2 connection beside
 * the pool, so that the file stays open when the pool retires all of its own at once. {@code RetiredConnectionsTest}
 * retires all connections; in other tests {@code testing.PoolOf} does.
 *
 * <p><b>The data file.</b> H2 writes it at each commit, and gives nothing back by itself then. {@code FileKeeper} looks
 * at it twenty times a second and tidies in small steps by {@code OpenFile} while others write; not while the disk is
 * short of room, where a step may take the last of it. Tried and left: H2 writing only when told to, and all who
 * write waiting for one common writing; after a full disk the file stayed locked and did not open again.
 */
package warmshelf.db;
