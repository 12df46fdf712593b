package warmshelf.backup;

import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.db.DataFacts;

/**
 * What a backup says of itself.
 *
 * @param format always {@link #FORMAT}
 * @param formatVersion of the backup's own form
 * @param madeAt ISO 8601, in UTC
 * @param version of the tables
 * @param changes lines of the record of changes
 * @param rows of each table
 */
@JsonPropertyOrder({"format", "formatVersion", "group", "madeAt", "version", "changes", "lastChangeAt", "rows"})
record BackupManifest(
        String format,
        int formatVersion,
        @Nullable String group,
        String madeAt,
        @Nullable String version,
        long changes,
        @Nullable String lastChangeAt,
        Map<String, Long> rows) {
    static final String FORMAT = "warmshelf-backup";
    static final int FORMAT_VERSION = 1;

    static BackupManifest of(DataFacts facts, String madeAt) {
        return new BackupManifest(
                FORMAT,
                FORMAT_VERSION,
                facts.group(),
                madeAt,
                facts.version(),
                facts.changes(),
                facts.lastChangeAt(),
                facts.rows());
    }

    boolean isOurs() {
        return FORMAT.equals(format) && formatVersion == FORMAT_VERSION && rows != null;
    }
}
