package warmshelf.privacy;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.table.HeadedTable;

/**
 * How a table is told on the page, in words that stand in {@code templates/privacy/en/known.csv}. What it holds besides, such as
 * keys and counts of versions, is in the files.
 *
 * @param shown the headings of its columns that are shown, by the column's name
 */
record KnownPart(String table, KnownMatter matter, String title, Map<String, String> shown) {
    private static final String FILE = "/templates/privacy/en/known.csv";
    private static final Map<String, KnownPart> ALL = read();

    /** All of them, in the order in which they are told. */
    static List<KnownPart> all() {
        return List.copyOf(ALL.values());
    }

    static KnownPart of(String table) {
        return Objects.requireNonNull(ALL.get(table), table);
    }

    private static Map<String, KnownPart> read() {
        try (InputStream file = Objects.requireNonNull(KnownPart.class.getResourceAsStream(FILE), FILE);
                CSVParser rows = HeadedTable.parse(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return rows.stream()
                    .map(KnownPart::of)
                    .collect(Collectors.toMap(
                            KnownPart::table,
                            part -> part,
                            (first, second) -> {
                                throw new IllegalStateException(FILE + " names twice: " + first.table());
                            },
                            LinkedHashMap::new));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static KnownPart of(CSVRecord row) {
        Map<String, String> shown = new LinkedHashMap<>();
        Arrays.stream(row.get("shown").split(";"))
                .map(column -> column.split(" ", 2))
                .forEach(column -> shown.put(column[0], column[1]));
        return new KnownPart(row.get("table"), KnownMatter.valueOf(row.get("matter")), row.get("title"), shown);
    }
}
