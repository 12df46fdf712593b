package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** The SHA-256 that a file says each of its parts has. */
final class Checksums {
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (\\S{1,120})");

    private final Map<String, String> ofParts;

    private Checksums(Map<String, String> ofParts) {
        this.ofParts = ofParts;
    }

    static Checksums in(SafeZip zip) throws IOException {
        Map<String, String> ofParts = new HashMap<>();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(zip.read(PartName.CHECKSUMS), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                Matcher read = LINE.matcher(line);
                if (!read.matches() || ofParts.put(read.group(2), read.group(1)) != null) {
                    throw new BadInput(SAY.checksumsUnreadable());
                }
            }
        }
        return new Checksums(ofParts);
    }

    @Nullable
    String of(String part) {
        return ofParts.get(part);
    }

    /**
     * Holds each part to its checksum, and each checksum to its part.
     *
     * @throws BadInput naming the part that is not as it was
     */
    void check(SafeZip zip) throws IOException {
        for (String part : ofParts.keySet()) {
            if (!zip.has(part)) {
                throw new BadInput(SAY.partMissing(part));
            }
        }
        byte[] dropped = new byte[65_536];
        for (String part : zip.names()) {
            if (!part.equals(PartName.CHECKSUMS)) {
                check(zip, part, dropped);
            }
        }
    }

    private void check(SafeZip zip, String part, byte[] dropped) throws IOException {
        String said = ofParts.get(part);
        if (said == null) {
            throw new BadInput(SAY.checksumMissing(part));
        }
        try (InputStream in = zip.read(part);
                DigestInputStream digested = new DigestInputStream(in, Digests.sha256())) {
            int read;
            do {
                read = digested.read(dropped);
            } while (read >= 0);
            if (!Digests.hex(digested.getMessageDigest()).equals(said)) {
                throw new BadInput(SAY.checksumWrong(part));
            }
        }
    }
}
