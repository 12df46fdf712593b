package warmshelf.archive;

import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.Map;

/**
 * What a file says of itself.
 *
 * @param format always {@link #FORMAT}
 * @param formatVersion of the file's own form
 * @param schema the version of the tables, which is that of the last migration
 * @param group its name
 * @param madeAt ISO 8601, in UTC
 * @param rows of each table
 */
@JsonPropertyOrder({"format", "formatVersion", "schema", "group", "madeAt", "rows"})
record Manifest(String format, int formatVersion, String schema, String group, String madeAt, Map<String, Long> rows) {
    static final String FORMAT = "warmshelf-group";
    static final int FORMAT_VERSION = 1;

    long rowsOf(String table) {
        return rows.getOrDefault(table, 0L);
    }
}
