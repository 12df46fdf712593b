package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.h2.tools.Csv;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.db.DescribedTable;
import warmshelf.db.TableOwnership;
import warmshelf.table.FormulaGuard;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestDatabase;

/** The parts of a file, read by libraries that had no hand in writing them. */
class ArchivePartsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private static Path folder;

    private static Path file;
    private static Map<String, String> parts;
    private static ArchiveMade made;

    @BeforeAll
    static void make() throws IOException {
        file = folder.resolve("group.zip");
        try (TestDatabase database = TestDatabase.h2()) {
            FullGroup.fill(database.database());
            made = Archives.export(database.database(), new MutableClock(FullGroup.MORNING), file);
        }
        parts = Archives.parts(file);
    }

    @Test
    void two_libraries_unpack_the_same_parts() throws IOException {
        Map<String, String> second = new LinkedHashMap<>();
        try (ZipFile zip = ZipFile.builder().setPath(file).get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntriesInPhysicalOrder())) {
                second.put(
                        entry.getName(),
                        new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.ISO_8859_1));
            }
        }

        assertThat(second).isEqualTo(parts);
        assertThat(file).hasSize(made.bytes());
    }

    @Test
    void each_part_has_the_checksum_that_stands_in_the_last() {
        List<String> lines =
                String.valueOf(parts.get("checksums.sha256")).lines().toList();
        Map<String, String> said = new LinkedHashMap<>();
        lines.forEach(line -> said.put(line.substring(66), line.substring(0, 64)));

        parts.forEach((name, bytes) -> {
            if (!name.equals("checksums.sha256")) {
                assertThat(said.remove(name)).as(name).isEqualTo(Archives.sha256(bytes));
            }
        });
        assertThat(said).isEmpty();
    }

    @Test
    void the_tables_for_people_say_what_the_rows_say_but_hashes() throws IOException {
        for (String part : parts.keySet()) {
            if (!part.startsWith("data/")) {
                continue;
            }
            String table = part.substring(5, part.length() - 6);
            List<Map<String, String>> fromJson = new ArrayList<>();
            for (String line : text(part).split("\n", -1)) {
                if (!line.isEmpty()) {
                    fromJson.add(shown(table, JSON.readTree(line)));
                }
            }

            assertThat(csv("tables/" + table + ".csv")).as(table).isEqualTo(fromJson);
        }
        assertThat(text("data/member.jsonl")).contains("\"passphrase_hash\":\"$argon2id$");
        assertThat(text("tables/member.csv")).doesNotContain("passphrase_hash", "$argon2id$");
    }

    @Test
    void no_cell_of_a_table_can_run_as_a_formula() throws IOException {
        List<Map<String, String>> varieties = csv("tables/variety.csv", false);

        assertThat(varieties)
                .allSatisfy(row -> assertThat(row.get("name")).doesNotMatch("(?s)[=+\\-@\\t\\r\\n].*"))
                .extracting(row -> FormulaGuard.unguarded(String.valueOf(row.get("name"))))
                .containsAll(FullGroup.HARD_TEXTS);
    }

    private static Map<String, String> shown(String table, JsonNode row) {
        Map<String, String> cells = new LinkedHashMap<>();
        row.fields().forEachRemaining(cell -> {
            if (!TableOwnership.isSecret(table, cell.getKey())) {
                JsonNode value = cell.getValue();
                cells.put(cell.getKey(), value.isNull() ? "" : plain(value.asText()));
            }
        });
        return cells;
    }

    private static List<Map<String, String>> csv(String part) throws IOException {
        return csv(part, true);
    }

    /** Read by H2's reader of such tables; commons-csv wrote them. */
    private static List<Map<String, String>> csv(String part, boolean unguarded) throws IOException {
        Csv reader = new Csv();
        reader.setPreserveWhitespace(true);
        reader.setCaseSensitiveColumnNames(true);
        List<Map<String, String>> rows = new ArrayList<>();
        try (ResultSet table = reader.read(new StringReader(text(part)), null)) {
            int columns = table.getMetaData().getColumnCount();
            while (table.next()) {
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 1; i <= columns; i++) {
                    String cell = Objects.requireNonNullElse(table.getString(i), "");
                    row.put(table.getMetaData().getColumnName(i), unguarded ? plain(cell) : cell);
                }
                rows.add(row);
            }
        } catch (SQLException unreadable) {
            throw new IOException(unreadable);
        }
        return rows;
    }

    private static String plain(String cell) {
        String text = FormulaGuard.unguarded(cell);
        return text.matches("-?\\d+\\.\\d+") ? String.valueOf(Double.parseDouble(text)) : text;
    }

    private static String text(String part) {
        return new String(
                String.valueOf(parts.get(part)).getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
    }

    @Test
    void the_photos_are_pictures_named_by_their_rows() throws IOException {
        Set<String> named = new TreeSet<>();
        for (String line : text("data/photo.jsonl").lines().toList()) {
            JsonNode row = JSON.readTree(line);
            if (!row.get("jpeg").asText().isEmpty()) {
                assertThat(row.get("jpeg").asText())
                        .isEqualTo("photos/" + row.get("id").asText() + ".jpg");
                named.add(row.get("jpeg").asText());
            } else {
                assertThat(row.get("removed_at").isNull()).isFalse();
            }
        }
        Set<String> there = new TreeSet<>(parts.keySet());
        there.removeIf(part -> !part.startsWith("photos/"));

        assertThat(there).isEqualTo(named).hasSize(4);
        for (String photo : there) {
            BufferedImage image = ImageIO.read(
                    new ByteArrayInputStream(String.valueOf(parts.get(photo)).getBytes(StandardCharsets.ISO_8859_1)));
            assertThat(image.getWidth()).isEqualTo(40);
        }
    }

    @Test
    void the_dictionary_has_each_column_that_is_in_the_file() throws IOException {
        Set<String> described = new TreeSet<>();
        for (JsonNode table : JSON.readTree(text("dictionary.json"))) {
            assertThat(table.get("about").asText()).isNotBlank();
            table.get("columns")
                    .forEach(column -> described.add(table.get("name").asText() + "."
                            + column.get("name").asText()));
        }
        Set<String> there = new TreeSet<>();
        for (DescribedTable table : DescribedTable.all()) {
            if (parts.containsKey("data/" + table.name() + ".jsonl")) {
                table.columns().forEach(column -> there.add(table.name() + "." + column.name()));
            }
        }

        assertThat(described).isEqualTo(there).hasSizeGreaterThan(500);
        assertThat(csv("dictionary.csv").stream()
                        .filter(row ->
                                !Objects.requireNonNull(row.get("column")).isEmpty())
                        .toList())
                .hasSameSizeAs(there);
    }

    @Test
    void the_manifest_counts_the_rows() throws IOException {
        JsonNode manifest = JSON.readTree(text("manifest.json"));

        manifest.get("rows")
                .fields()
                .forEachRemaining(table -> assertThat(
                                text("data/" + table.getKey() + ".jsonl").lines())
                        .as(table.getKey())
                        .hasSize(table.getValue().asInt()));
        assertThat(manifest.get("group").asText()).isEqualTo("Hill and Shore Seed Starters");
        assertThat(manifest.get("madeAt").asText()).isEqualTo("2027-05-04T14:00:00Z");
    }
}
