package warmshelf.archive;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A zip that is written part by part, with the SHA-256 of each as its last part, in the form that {@code sha256sum -c} reads. Of a
 * part that was written, nothing is kept but its line there.
 */
public final class ZipParts implements AutoCloseable {
    private final ZipOutputStream zip;
    private final LocalDateTime at;
    private final StringBuilder checksums = new StringBuilder();

    public ZipParts(OutputStream out, Instant at) {
        this.zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        this.at = LocalDateTime.ofInstant(at, ZoneOffset.UTC);
    }

    /** What writes a part. */
    public interface Part {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Adds a part. */
    public void add(String name, Part part) throws IOException {
        zip.putNextEntry(entry(name));
        DigestOutputStream digested = new DigestOutputStream(new LeftOpen(zip), Digests.sha256());
        part.writeTo(digested);
        zip.closeEntry();
        note(name, digested.getMessageDigest());
    }

    /** A part that is packed already, such as a picture. */
    public void addPacked(String name, byte[] bytes) throws IOException {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        ZipEntry entry = entry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(bytes.length);
        entry.setCrc(crc.getValue());
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
        MessageDigest digest = Digests.sha256();
        digest.update(bytes);
        note(name, digest);
    }

    private ZipEntry entry(String name) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(at);
        return entry;
    }

    private void note(String name, MessageDigest digest) {
        checksums.append(Digests.hex(digest)).append("  ").append(name).append('\n');
    }

    /** Adds the checksums and ends the zip; what it is written to stays open. */
    @Override
    public void close() throws IOException {
        zip.putNextEntry(entry(PartName.CHECKSUMS));
        zip.write(checksums.toString().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
        zip.finish();
    }

    /** The zip goes on after a part that closes what it writes to. */
    private static final class LeftOpen extends FilterOutputStream {
        LeftOpen(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() {
            // the zip is closed by whoever opened it
        }
    }
}
