package warmshelf.db;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a data file holds, and how far it goes.
 *
 * @param group the name of the group that lives there; null: none does
 * @param version of its tables; null: it has none
 * @param changes lines of the record of changes
 * @param lastChangeAt when the last was written, ISO 8601; null: there is none
 * @param entries what was seen at sowings
 * @param lastEntryAt when the last was kept, ISO 8601; null: there is none
 * @param rows of each table, by name
 */
public record DataFacts(
        @Nullable String group,
        @Nullable String version,
        long changes,
        @Nullable String lastChangeAt,
        long entries,
        @Nullable String lastEntryAt,
        Map<String, Long> rows) {}
