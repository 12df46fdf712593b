package warmshelf;

import java.nio.file.Path;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * What the program sees to by itself.
 *
 * @param backups the folder for backups; null: one in the data folder
 * @param backupAt the time of day, in the group's zone, at which one is made; null: none is
 * @param keepFree bytes of the data folder's disk that stay free
 */
public record Upkeep(@Nullable Path backups, @Nullable LocalTime backupAt, long keepFree) {
    /** Nothing. */
    public static final Upkeep NONE = new Upkeep(null, null, 0);

    /** The folder in which backups of a data folder lie. */
    public Path backupsOf(Path data) {
        return backups == null ? data.resolve("backups") : backups;
    }
}
