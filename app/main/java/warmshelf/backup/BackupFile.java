package warmshelf.backup;

import static warmshelf.backup.BackupSentences.SAY;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.db.Database;

/** The zip of a backup: the data file, and what it says of itself. */
final class BackupFile {
    static final String MANIFEST = "backup.json";
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int LARGEST_MANIFEST = 1_000_000;

    private BackupFile() {}

    /** Writes one; it is on the disk when this returns. */
    static void write(Path data, BackupManifest manifest, Path out) throws IOException {
        try (FileChannel channel = FileChannel.open(out, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(Channels.newOutputStream(channel)));
            zip.putNextEntry(new ZipEntry(MANIFEST));
            zip.write(JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(manifest));
            zip.closeEntry();
            zip.putNextEntry(new ZipEntry(Database.FILE));
            Files.copy(data, zip);
            zip.closeEntry();
            zip.finish();
            zip.flush();
            channel.force(true);
        }
    }

    /**
     * Unpacks the data file of a backup, or of a zip that the database itself has just written.
     *
     * @throws BadInput when it is none, or was cut short
     */
    static void unpackData(Path file, Path to) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry data = zip.getEntry(Database.FILE);
            if (data == null) {
                throw new BadInput(SAY.noBackup(file.toString()));
            }
            if (Files.getFileStore(to.toAbsolutePath().getParent()).getUsableSpace() < data.getSize()) {
                throw new BadInput(SAY.noRoomToUnpack(String.valueOf(to.getParent())));
            }
            try (CheckedInputStream in = new CheckedInputStream(zip.getInputStream(data), new CRC32());
                    OutputStream out = Files.newOutputStream(to, StandardOpenOption.CREATE_NEW)) {
                in.transferTo(out);
                if (in.getChecksum().getValue() != data.getCrc()) {
                    throw new BadInput(SAY.cutShort(file.toString()));
                }
            }
        } catch (ZipException cutShort) {
            throw new BadInput(SAY.cutShort(file.toString()));
        }
    }

    /**
     * What a backup says of itself.
     *
     * @throws BadInput when it is none, or was cut short
     */
    static BackupManifest manifest(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(SAY.noSuchFile(file.toString()));
        }
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry entry = zip.getEntry(MANIFEST);
            @Nullable BackupManifest manifest = entry == null ? null : read(zip, entry);
            if (manifest == null || !manifest.isOurs()) {
                throw new BadInput(SAY.noBackup(file.toString()));
            }
            return manifest;
        } catch (ZipException cutShort) {
            throw new BadInput(SAY.cutShort(file.toString()));
        }
    }

    private static @Nullable BackupManifest read(ZipFile zip, ZipEntry entry) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            return JSON.readValue(in.readNBytes(LARGEST_MANIFEST), BackupManifest.class);
        } catch (JsonProcessingException broken) {
            return null;
        }
    }
}
