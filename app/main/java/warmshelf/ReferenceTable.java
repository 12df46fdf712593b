package warmshelf;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.table.HeadedTable;

/** A bundled table of {@code db/reference}; where each is from and how far to trust it stands in its own columns. */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** The rows of a table, readable by column name. */
    public static List<CSVRecord> rows(String file) {
        try (InputStream stream = open(file);
                CSVParser parser = HeadedTable.parse(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return parser.getRecords();
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the bundled table " + file + " cannot be read", unreadable);
        }
    }

    /** The bytes of a table that is too large to be read row by row at every start. */
    public static byte[] bytes(String file) {
        try (InputStream stream = open(file)) {
            return stream.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the bundled table " + file + " cannot be read", unreadable);
        }
    }

    private static InputStream open(String file) {
        InputStream stream = ReferenceTable.class.getResourceAsStream("/db/reference/" + file);
        if (stream == null) {
            throw new IllegalStateException("the bundled table " + file + " is missing from the program");
        }
        return stream;
    }
}
