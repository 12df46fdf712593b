package warmshelf.table;

import java.io.IOException;
import java.io.Reader;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * Tables with commas whose first row names their columns, as the program brings them along and as commands are given them. How those
 * that people send on pages are written is told from the {@linkplain TableFile file}.
 */
public final class HeadedTable {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .setIgnoreEmptyLines(true)
            .setAllowMissingColumnNames(true)
            .get();

    private HeadedTable() {}

    /** The rows, readable by the names of their columns, without the spaces around cells. */
    public static CSVParser parse(Reader text) throws IOException {
        return FORMAT.parse(text);
    }
}
