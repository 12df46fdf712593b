package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** A file with a whole group, opened to be checked and taken in. */
final class ArchiveFile implements RowSource, AutoCloseable {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final SafeZip zip;
    private final Checksums checksums;
    private final Manifest manifest;

    private ArchiveFile(SafeZip zip, Checksums checksums, Manifest manifest) {
        this.zip = zip;
        this.checksums = checksums;
        this.manifest = manifest;
    }

    /**
     * Opens a file; what its parts hold is checked later, when it is known which tables it should have.
     *
     * @throws BadInput when it cannot be one
     */
    static ArchiveFile open(Path file) throws IOException {
        SafeZip zip = SafeZip.open(file);
        try {
            return new ArchiveFile(zip, Checksums.in(zip), manifest(zip));
        } catch (BadInput refused) {
            zip.close();
            throw refused;
        }
    }

    private static Manifest manifest(SafeZip zip) throws IOException {
        Manifest manifest;
        try (InputStream in = zip.read(PartName.MANIFEST)) {
            manifest = JSON.readValue(in, Manifest.class);
        } catch (JsonProcessingException broken) {
            throw new BadInput(SAY.manifestUnreadable());
        }
        if (manifest == null || !Manifest.FORMAT.equals(manifest.format())) {
            throw new BadInput(SAY.formatUnknown());
        }
        if (manifest.formatVersion() != Manifest.FORMAT_VERSION) {
            throw new BadInput(SAY.formatNewer());
        }
        if (manifest.schema() == null || manifest.group() == null || manifest.rows() == null) {
            throw new BadInput(SAY.manifestUnreadable());
        }
        return manifest;
    }

    Manifest manifest() {
        return manifest;
    }

    /** The SHA-256 of a part. */
    @Nullable
    String checksum(String part) {
        return checksums.of(part);
    }

    /** What was found while checking. */
    record Checked(ArchiveTally tally, Map<String, Long> lastCounted) {}

    /**
     * Checks everything: that each part is as it was written, that the tables are those and no others, and each row.
     *
     * @param schema the tables as they were in the version that the file names
     * @throws BadInput with the first thing that is not as it should be
     */
    Checked check(ArchiveSchema schema) throws IOException {
        refuseTables(schema);
        checksums.check(zip);
        Map<String, Long> lastCounted = new HashMap<>();
        Set<UUID> claimed = new HashSet<>();
        for (ArchiveTable table : schema.ofTheGroup()) {
            lastCounted.put(table.name(), check(table, claimed));
        }
        for (String part : zip.names()) {
            if (PartName.isPhoto(part) && !claimed.contains(PartName.ofPhoto(part))) {
                throw new BadInput(SAY.pictureUnclaimed(part));
            }
        }
        if (manifest.rowsOf("group_profile") != 1) {
            throw new BadInput(SAY.groupMissing());
        }
        return new Checked(ArchiveTally.of(manifest, claimed.size()), lastCounted);
    }

    private void refuseTables(ArchiveSchema schema) {
        Set<String> wanted =
                schema.ofTheGroup().stream().map(ArchiveTable::name).collect(Collectors.toSet());
        for (String table : wanted) {
            if (!zip.has(PartName.data(table)) || !manifest.rows().containsKey(table)) {
                throw new BadInput(SAY.tableMissing(table));
            }
        }
        for (String table : manifest.rows().keySet()) {
            if (!wanted.contains(table)) {
                throw new BadInput(SAY.tableUnknown(table));
            }
        }
        for (String part : zip.names()) {
            if (PartName.isData(part) && wanted.stream().map(PartName::data).noneMatch(part::equals)) {
                throw new BadInput(SAY.tableUnknown(part));
            }
        }
    }

    /** Checks each row; answers with the highest number that the database counted up. */
    private long check(ArchiveTable table, Set<UUID> claimed) throws IOException {
        CountedRows counted = new CountedRows(table);
        forEach(table, row -> {
            counted.row(row);
            for (String name : Pictures.in(table, row)) {
                claim(name, claimed);
            }
        });
        long said = manifest.rowsOf(table.name());
        if (counted.rows() != said) {
            throw new BadInput(SAY.rowsMiscounted(table.name(), said, counted.rows()));
        }
        return counted.lastCounted();
    }

    private void claim(String name, Set<UUID> claimed) throws IOException {
        if (!zip.has(name) || !claimed.add(PartName.ofPhoto(name))) {
            throw new BadInput(SAY.pictureMissing(name));
        }
        try (InputStream in = zip.read(name)) {
            byte[] start = in.readNBytes(3);
            // each JPEG begins so (ITU-T T.81, start of image, then a marker)
            if (start.length < 3 || start[0] != (byte) 0xff || start[1] != (byte) 0xd8 || start[2] != (byte) 0xff) {
                throw new BadInput(SAY.noPicture(name));
            }
        }
    }

    @Override
    public void forEach(ArchiveTable table, Visitor visitor) throws IOException {
        try (InputStream in = zip.read(PartName.data(table.name()))) {
            RowParser.read(in, table, visitor);
        }
    }

    @Override
    public byte[] picture(String name) throws IOException {
        try (InputStream in = zip.read(name)) {
            return in.readAllBytes();
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
