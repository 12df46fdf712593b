/**
 * Backups of a data folder: made while the program runs or not, proved by opening them, kept by a rule, and brought back.
 *
 * <p>A backup is a zip. {@code warmshelf.mv.db} is the database's own file as it was at one moment; {@code backup.json} says which
 * group it is, how far it goes and how many rows each table has. {@code BackupMaker} writes one: the database copies itself while
 * others write, the copy is opened and read whole, its rows are counted table by table, and only then it gets its name. What has
 * that name has been proved.
 *
 * <p>{@code BackupWork} makes them by itself at an hour of the day; {@code KeepRule} says which stay, {@code BackupState} how things
 * stand. A command cannot open a folder that a server has: it leaves a wish there ({@code BackupWish}), which the server answers with
 * the name of a fresh backup.
 *
 * <p>{@code DiskNews} tells of the disk itself; {@code db.DiskRoom} judges it, for pages, for forms and for every write.
 *
 * <p>Where the data lie in PostgreSQL that database's own tools make the backups, and this room says so.
 */
@NullMarked
package warmshelf.backup;

import org.jspecify.annotations.NullMarked;
