package warmshelf;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * What the program sees to by itself.
 *
 * @param backups the folder for backups; null: one in the data folder
 * @param backupAt the time of day, in the group's zone, at which one is made; null: none is
 * @param keepFree bytes of the data folder's disk that stay free
 * @param slowQuery how long the database may take for one question until the log tells of it
 */
public record Upkeep(@Nullable Path backups, @Nullable LocalTime backupAt, long keepFree, Duration slowQuery) {
    /** As long as people wait without wondering. */
    public static final Duration SLOW_QUERY = Duration.ofSeconds(1);

    /** Nothing. */
    public static final Upkeep NONE = new Upkeep(null, null, 0, SLOW_QUERY);

    /** The folder in which backups of a data folder lie. */
    public Path backupsOf(Path data) {
        return backups == null ? data.resolve("backups") : backups;
    }
}
