package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import warmshelf.BadInput;

/** Opens the texts in the files that were sent, one after another; a file may be packed as .zip or .gz. */
final class UploadedTexts {
    /** A small file can be packed so that it unpacks to more than any disk holds. */
    static final long MOST_UNPACKED = 1_000_000_000;

    static final int MOST_ENTRIES = 20_000;
    private static final byte[] GZIP = {(byte) 0x1f, (byte) 0x8b};
    private static final byte[] ZIP = {'P', 'K', 3, 4};

    private final CountedInput counting;
    private int entries;

    UploadedTexts(ReadingProgress watch) {
        counting = new CountedInput(watch, MOST_UNPACKED);
    }

    /** Reads one text. */
    interface Reader {
        /** Returns false when no further text is wanted. */
        boolean read(String name, InputStream text) throws IOException;
    }

    long rows() {
        return counting.rows();
    }

    long bytes() {
        return counting.bytes();
    }

    void each(List<UploadedFile> files, Reader reader) throws IOException {
        for (UploadedFile file : files) {
            try (BufferedInputStream sent =
                    new BufferedInputStream(counting.sent(Files.newInputStream(file.path())), 65_536)) {
                if (!each(file.name(), sent, reader)) {
                    return;
                }
            } catch (ZipException | EOFException broken) {
                throw new BadInput(SAY.fileDamaged(file.name()));
            }
        }
    }

    private boolean each(String name, BufferedInputStream sent, Reader reader) throws IOException {
        if (startsWith(sent, ZIP)) {
            return eachEntry(name, new ZipInputStream(sent), reader);
        }
        InputStream text = startsWith(sent, GZIP) ? new GZIPInputStream(sent, 65_536) : sent;
        return reader.read(name, counting.text(text));
    }

    private boolean eachEntry(String name, ZipInputStream zip, Reader reader) throws IOException {
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            if (++entries > MOST_ENTRIES) {
                throw new BadInput(SAY.tooManyInside(name, MOST_ENTRIES));
            }
            if (isText(entry) && !reader.read(shortName(entry), counting.text(zip))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isText(ZipEntry entry) {
        String name = shortName(entry).toLowerCase(Locale.ROOT);
        return !entry.isDirectory()
                && !entry.getName().startsWith("__MACOSX/")
                && !name.startsWith(".")
                && !name.startsWith("readme");
    }

    private static String shortName(ZipEntry entry) {
        String name = entry.getName();
        return name.substring(name.lastIndexOf('/') + 1);
    }

    private static boolean startsWith(BufferedInputStream stream, byte[] start) throws IOException {
        stream.mark(start.length);
        byte[] found = stream.readNBytes(start.length);
        stream.reset();
        return Arrays.equals(found, start);
    }
}
