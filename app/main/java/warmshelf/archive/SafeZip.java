package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import warmshelf.BadInput;

/**
 * A zip from anywhere, of which nothing is believed: only parts of known names are read, none of them lands in a file of its
 * name, and what a part unpacks to is bounded before and while it is read.
 */
final class SafeZip implements AutoCloseable {
    /** Five hundred seasons of a large group's photos. */
    private static final int MOST_PARTS = 200_000;
    /** What is read as a whole: checksums of that many parts, and the words. */
    private static final long LARGEST_LIST = 30_000_000;
    /** As the database holds pictures to 300 KiB. */
    private static final long LARGEST_PHOTO = 1_000_000;

    private static final long LARGEST_PART = 8L << 30;
    private static final long LARGEST_TOTAL_GB = 64;
    /** Rows of the same form pack well: of the largest tables a byte holds up to sixty. Deflate itself comes to a thousand. */
    private static final long MOST_UNPACKED_OF_ONE = 250;

    private static final long SMALL = 1_000_000;

    private final ZipFile zip;
    private final Map<String, ZipEntry> parts;

    private SafeZip(ZipFile zip, Map<String, ZipEntry> parts) {
        this.zip = zip;
        this.parts = parts;
    }

    /**
     * Opens a file and looks at the list of its parts.
     *
     * @throws BadInput when it is no zip, was cut off, or has parts that it should not have
     */
    static SafeZip open(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(SAY.noSuchFile(file.toString()));
        }
        if (!Files.isReadable(file)) {
            throw new BadInput(SAY.fileUnreadable(file.toString()));
        }
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile());
        } catch (ZipException noZip) {
            throw new BadInput(SAY.notZip(file.toString()));
        }
        try {
            return new SafeZip(zip, looked(zip));
        } catch (RuntimeException refused) {
            zip.close();
            throw refused;
        }
    }

    private static Map<String, ZipEntry> looked(ZipFile zip) {
        if (zip.size() > MOST_PARTS) {
            throw new BadInput(SAY.tooManyParts(MOST_PARTS));
        }
        Map<String, ZipEntry> parts = new LinkedHashMap<>();
        long total = 0;
        for (ZipEntry part : Collections.list(zip.entries())) {
            String name = part.getName();
            refuseName(name);
            refuseSize(part);
            total += part.getSize();
            if (parts.put(name, part) != null) {
                throw new BadInput(SAY.partTwice(name));
            }
        }
        if (total > LARGEST_TOTAL_GB << 30) {
            throw new BadInput(SAY.allTooLarge(LARGEST_TOTAL_GB));
        }
        return parts;
    }

    private static void refuseName(String name) {
        if (PartName.climbs(name)) {
            throw new BadInput(SAY.partClimbs(shown(name)));
        }
        if (!PartName.isKnown(name)) {
            throw new BadInput(SAY.partUnknown(shown(name)));
        }
    }

    private static String shown(String name) {
        String plain = name.replaceAll("\\p{Cntrl}", "?");
        return plain.length() <= 80 ? plain : plain.substring(0, 80) + "…";
    }

    private static void refuseSize(ZipEntry part) {
        long size = part.getSize();
        boolean bursts = size > SMALL && size > part.getCompressedSize() * MOST_UNPACKED_OF_ONE;
        if (size > most(part.getName()) || bursts) {
            throw new BadInput(SAY.partTooLarge(part.getName()));
        }
    }

    private static long most(String name) {
        if (PartName.isPhoto(name)) {
            return LARGEST_PHOTO;
        }
        return PartName.isTable(name) ? LARGEST_PART : LARGEST_LIST;
    }

    Iterable<String> names() {
        return parts.keySet();
    }

    boolean has(String name) {
        return parts.containsKey(name);
    }

    /**
     * Reads a part.
     *
     * @throws BadInput while it is read, when it is longer or shorter than the zip says, or broken
     */
    InputStream read(String name) throws IOException {
        ZipEntry part = parts.get(name);
        if (part == null) {
            throw new BadInput(SAY.partMissing(name));
        }
        try {
            return new Bounded(zip.getInputStream(part), name, part.getSize());
        } catch (ZipException broken) {
            throw new BadInput(SAY.cutShort(name));
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** Ends where the zip says that the part does, and refuses one that goes on or that cannot be unpacked. */
    private static final class Bounded extends FilterInputStream {
        private final String name;
        private long left;

        Bounded(InputStream in, String name, long size) {
            super(in);
            this.name = name;
            this.left = size;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            try {
                int read = in.read(bytes, from, length);
                left -= Math.max(read, 0);
                if (left < 0 || (read < 0 && left > 0)) {
                    throw new BadInput(SAY.cutShort(name));
                }
                return read;
            } catch (ZipException | java.io.EOFException broken) {
                throw new BadInput(SAY.cutShort(name));
            }
        }
    }
}
