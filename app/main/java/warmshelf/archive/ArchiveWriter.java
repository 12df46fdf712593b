package warmshelf.archive;

import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import warmshelf.db.DescribedTable;
import warmshelf.db.TableOwnership;
import warmshelf.table.TableShape;
import warmshelf.table.TableWriter;

/** Writes a group into one file, row by row and picture by picture: it never holds more than one of them. */
final class ArchiveWriter {
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    private static final String README = "/templates/archive/en/readme.txt";

    private final ArchiveSchema schema;
    private final RowSource rows;
    private final ZipParts parts;
    private final Map<String, Long> counts = new TreeMap<>();
    private long photos;

    private ArchiveWriter(ArchiveSchema schema, RowSource rows, ZipParts parts) {
        this.schema = schema;
        this.rows = rows;
        this.parts = parts;
    }

    /**
     * Writes the file; what it is written to stays open.
     *
     * @param group the group's name
     * @throws IOException when it cannot be written; what was written so far is of no use then
     */
    static ArchiveMade write(ArchiveSchema schema, RowSource rows, String group, Instant at, OutputStream out)
            throws IOException {
        CountedBytes counted = new CountedBytes(out);
        DigestOutputStream digested = new DigestOutputStream(counted, Digests.sha256());
        Manifest manifest;
        long photos;
        try (ZipParts parts = new ZipParts(digested, at)) {
            ArchiveWriter writer = new ArchiveWriter(schema, rows, parts);
            writer.writeWords();
            writer.writeTables();
            manifest = new Manifest(
                    Manifest.FORMAT, Manifest.FORMAT_VERSION, schema.version(), group, at.toString(), writer.counts);
            parts.add(PartName.MANIFEST, part -> part.write(JSON.writeValueAsBytes(manifest)));
            photos = writer.photos;
        }
        return new ArchiveMade(
                ArchiveTally.of(manifest, photos), counted.bytes(), Digests.hex(digested.getMessageDigest()));
    }

    private void writeWords() throws IOException {
        List<DescribedTable> described = DescribedTable.all().stream()
                .filter(table -> TableOwnership.isTheGroups(table.name()))
                .toList();
        parts.add(PartName.README, ArchiveWriter::writeReadme);
        parts.add(PartName.DICTIONARY_JSON, part -> part.write(JSON.writeValueAsBytes(described)));
        parts.add(PartName.DICTIONARY_CSV, part -> {
            try (Writer text = text(part)) {
                writeDictionary(described, text);
            }
        });
    }

    private static void writeReadme(OutputStream part) throws IOException {
        try (InputStream words = ArchiveWriter.class.getResourceAsStream(README)) {
            if (words == null) {
                throw new IllegalStateException("there is no " + README);
            }
            words.transferTo(part);
        }
    }

    private static void writeDictionary(List<DescribedTable> described, Appendable out) throws IOException {
        TableWriter csv = new TableWriter(
                out, TableShape.PROGRAM, List.of("table", "column", "kind", "may_be_empty", "about", "leads_to"));
        for (DescribedTable table : described) {
            csv.row(table.name(), null, null, null, table.about(), null);
            for (DescribedTable.Column column : table.columns()) {
                csv.row(
                        table.name(),
                        column.name(),
                        column.kind(),
                        column.mayBeEmpty(),
                        column.about(),
                        column.leadsTo());
            }
        }
    }

    private void writeTables() throws IOException {
        for (ArchiveTable table : schema.ofTheGroup()) {
            parts.add(PartName.data(table.name()), part -> writeJson(table, part));
        }
        for (ArchiveTable table : schema.ofTheGroup()) {
            parts.add(PartName.table(table.name()), part -> {
                try (Writer text = text(part)) {
                    rows.forEach(table, new RowCsv(table, text));
                }
            });
        }
        for (ArchiveTable table : schema.ofTheGroup()) {
            if (table.hasPictures()) {
                writePictures(table);
            }
        }
    }

    private void writeJson(ArchiveTable table, OutputStream part) throws IOException {
        CountedRows counted = new CountedRows(table);
        try (RowJson json = new RowJson(table, part)) {
            rows.forEach(table, row -> {
                counted.row(row);
                json.row(row);
            });
        }
        counts.put(table.name(), counted.rows());
    }

    private void writePictures(ArchiveTable table) throws IOException {
        rows.forEach(table, row -> {
            for (String name : Pictures.in(table, row)) {
                parts.addPacked(name, rows.picture(name));
                photos++;
            }
        });
    }

    private static Writer text(OutputStream part) {
        return new BufferedWriter(new OutputStreamWriter(part, StandardCharsets.UTF_8));
    }
}
