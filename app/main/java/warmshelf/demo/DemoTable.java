package warmshelf.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.table.HeadedTable;

/** A table of the folder demo. */
final class DemoTable {
    private DemoTable() {}

    /** The rows of a table, readable by column name. */
    static List<CSVRecord> rows(String file) {
        try (InputStream stream = DemoTable.class.getResourceAsStream("/demo/" + file)) {
            if (stream == null) {
                throw new IllegalStateException("the demo's table " + file + " is missing from the program");
            }
            try (CSVParser parser = HeadedTable.parse(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                return parser.getRecords();
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the demo's table " + file + " cannot be read", unreadable);
        }
    }

    /** What a name of one table stands for in another. */
    static <T> T known(Map<String, T> by, String name) {
        T found = by.get(name);
        if (found == null) {
            throw new IllegalStateException("the demo's tables do not fit together: there is no '" + name + "'");
        }
        return found;
    }

    static int number(CSVRecord row, String column) {
        return Integer.parseInt(row.get(column));
    }
}
