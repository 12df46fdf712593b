package warmshelf;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The settings for what the program sees to by itself. */
public final class UpkeepOptions {
    /** No backup is made by itself. */
    public static final String NEVER = "never";

    private static final String BACKUP_AT = "03:00";
    private static final String KEEP_FREE = "200";
    private static final String SLOW_QUERY = "1000";
    private static final long BYTES = 1_000_000;

    @Option(
            names = "--backups",
            paramLabel = "FOLDER",
            description = "Folder for backups of the data folder; best on another disk"
                    + " (WARMSHELF_BACKUPS, default 'backups' in the data folder).")
    private @Nullable String backups;

    @Option(
            names = "--backup-at",
            paramLabel = "TIME",
            description = "Time of day, in the group's time zone, at which a backup of the data folder is made, or "
                    + NEVER + " (WARMSHELF_BACKUP_AT, default " + BACKUP_AT + ").")
    private @Nullable String backupAt;

    @Option(
            names = "--keep-free",
            paramLabel = "MB",
            description = "Megabytes of the data folder's disk that stay free: with less, what is there can be read and"
                    + " nothing is saved (WARMSHELF_KEEP_FREE, default " + KEEP_FREE + ").")
    private @Nullable String keepFree;

    @Option(
            names = "--slow-query",
            paramLabel = "MS",
            description = "Milliseconds that the database may take for one question until the log tells of it, with the"
                    + " request that asked (WARMSHELF_SLOW_QUERY, default " + SLOW_QUERY + ").")
    private @Nullable String slowQuery;

    Upkeep read(Map<String, String> environment) {
        return new Upkeep(
                SettingsOptions.given("--backups", backups, environment).orNothing(SettingsOptions::folder),
                SettingsOptions.given("--backup-at", backupAt, environment).orDefault(BACKUP_AT, UpkeepOptions::time),
                SettingsOptions.given("--keep-free", keepFree, environment)
                        .orDefault(KEEP_FREE, UpkeepOptions::megabytes),
                SettingsOptions.given("--slow-query", slowQuery, environment)
                        .orDefault(SLOW_QUERY, UpkeepOptions::milliseconds));
    }

    private static Duration milliseconds(SettingsOptions.Given given) {
        if (!given.text().matches("[1-9]\\d{0,5}")) {
            throw given.refused("a whole number of milliseconds from 1 to 999999 is accepted");
        }
        return Duration.ofMillis(Long.parseLong(given.text()));
    }

    private static long megabytes(SettingsOptions.Given given) {
        if (!given.text().matches("\\d{1,6}")) {
            throw given.refused("a whole number of megabytes from 0 to 999999 is accepted");
        }
        return BYTES * Long.parseLong(given.text());
    }

    @SuppressWarnings("NullAway") // null means never, as the record says
    private static @Nullable LocalTime time(SettingsOptions.Given given) {
        if (given.text().equals(NEVER)) {
            return null;
        }
        try {
            return LocalTime.parse(given.text());
        } catch (DateTimeException noTime) {
            throw given.refused("a time such as 03:00, or " + NEVER + ", is accepted");
        }
    }
}
