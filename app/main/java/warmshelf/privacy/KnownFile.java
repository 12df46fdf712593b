package warmshelf.privacy;

import static java.nio.charset.StandardCharsets.UTF_8;
import static warmshelf.privacy.PrivacySentences.SAY;

import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import warmshelf.archive.ZipParts;
import warmshelf.db.DescribedTable;
import warmshelf.table.TableShape;
import warmshelf.table.TableWriter;

/** Writes what is known of a person as a zip: tables for people and for programs, what their columns mean, and the photos. */
final class KnownFile {
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private KnownFile() {}

    /**
     * Writes the file; what it is written to stays open.
     *
     * @param photo the picture of an id
     */
    static void write(
            OutputStream out, Instant at, List<KnownTable> tables, List<UUID> photos, Function<UUID, byte[]> photo)
            throws IOException {
        try (ZipParts zip = new ZipParts(out, at)) {
            zip.add("README.txt", part -> part.write(SAY.readme().getBytes(UTF_8)));
            zip.add("dictionary.csv", part -> writeDictionary(tables, part));
            for (KnownTable table : tables) {
                zip.add("tables/" + table.name() + ".csv", part -> writeTable(table, part));
                zip.add("data/" + table.name() + ".json", part -> part.write(JSON.writeValueAsBytes(objects(table))));
            }
            for (UUID id : photos) {
                zip.addPacked("photos/" + id + ".jpg", photo.apply(id));
            }
        }
    }

    private static void writeDictionary(List<KnownTable> tables, OutputStream part) throws IOException {
        try (Writer text = text(part)) {
            TableWriter csv = new TableWriter(
                    text, TableShape.PROGRAM, List.of("table", "column", "kind", "may_be_empty", "about"));
            for (KnownTable table : tables) {
                csv.row(table.name(), null, null, null, table.about());
                for (DescribedTable.Column column : table.columns()) {
                    csv.row(table.name(), column.name(), column.kind(), column.mayBeEmpty(), column.about());
                }
            }
        }
    }

    private static void writeTable(KnownTable table, OutputStream part) throws IOException {
        try (Writer text = text(part)) {
            TableWriter csv = new TableWriter(
                    text,
                    TableShape.PROGRAM,
                    table.columns().stream().map(DescribedTable.Column::name).toList());
            for (List<@Nullable Object> row : table.rows()) {
                csv.row(row.stream().map(KnownFile::cell).toArray());
            }
        }
    }

    private static List<Map<String, @Nullable Object>> objects(KnownTable table) {
        List<Map<String, @Nullable Object>> objects = new ArrayList<>();
        for (List<@Nullable Object> row : table.rows()) {
            Map<String, @Nullable Object> object = new LinkedHashMap<>();
            for (int i = 0; i < row.size(); i++) {
                object.put(table.columns().get(i).name(), plain(cell(row.get(i))));
            }
            objects.add(object);
        }
        return objects;
    }

    /** Numbers and yes or no as JSON has them, all else as text. */
    private static @Nullable Object plain(@Nullable Object cell) {
        return cell == null || cell instanceof Number || cell instanceof Boolean ? cell : cell.toString();
    }

    private static @Nullable Object cell(@Nullable Object value) {
        return value instanceof KnownTable.Who who ? KnownWords.who(who) : value;
    }

    private static Writer text(OutputStream part) {
        return new BufferedWriter(new OutputStreamWriter(part, UTF_8));
    }
}
