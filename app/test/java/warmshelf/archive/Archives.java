package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Files with a group, made and spoiled for tests, without the program's own reading and checksums. */
final class Archives {
    private Archives() {}

    static ArchiveMade export(Database database, Clock clock, Path to) throws IOException {
        ArchiveStore store = new ArchiveStore(database, new Audit(clock));
        try (OutputStream out = Files.newOutputStream(to)) {
            return store.make(store.group().orElseThrow(), out, null);
        }
    }

    /** The parts in their order, as text where each byte is a letter. */
    static Map<String, String> parts(Path file) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                assertThat(parts.put(part.getName(), new String(zip.readAllBytes(), StandardCharsets.ISO_8859_1)))
                        .isNull();
            }
        }
        return parts;
    }

    /** A zip of these parts as they are. */
    static Path zip(Map<String, String> parts, Path to) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(to))) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.ISO_8859_1));
                zip.closeEntry();
            }
        }
        return to;
    }

    /** The same with checksums that fit. */
    static Path zipWithChecksums(Map<String, String> parts, Path to) throws IOException {
        Map<String, String> all = new LinkedHashMap<>(parts);
        all.remove("checksums.sha256");
        StringBuilder lines = new StringBuilder();
        for (Map.Entry<String, String> part : all.entrySet()) {
            lines.append(sha256(part.getValue()))
                    .append("  ")
                    .append(part.getKey())
                    .append('\n');
        }
        all.put("checksums.sha256", lines.toString());
        return zip(all, to);
    }

    static String sha256(String bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes.getBytes(StandardCharsets.ISO_8859_1));
            StringBuilder hex = new StringBuilder();
            for (byte each : digest) {
                hex.append("%02x".formatted(each));
            }
            return hex.toString();
        } catch (java.security.NoSuchAlgorithmException neverHappens) {
            throw new IllegalStateException(neverHappens);
        }
    }
}
