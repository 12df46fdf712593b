package warmshelf.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A small file beside the group's data that tells how far they had come: how many changes there were, and when the last was. The
 * database cannot tell: a file of it that is cut short opens as if whole, with what there was earlier or with nothing.
 */
final class FolderMark {
    static final String NAME = "warmshelf.mark";
    static final String DATA = "warmshelf.mv.db";

    private static final Logger LOG = LoggerFactory.getLogger(FolderMark.class);

    private final Path folder;

    FolderMark(Path folder) {
        this.folder = folder;
    }

    /**
     * How far a group had come.
     *
     * @param changes lines of the record of changes, which only ever grows
     * @param last when the last of them was written; empty: there is none
     */
    record Reach(long changes, String last) {
        static Reach of(Statement statement) throws SQLException {
            try (ResultSet found = statement.executeQuery("select count(*), max(at) from audit_line")) {
                found.next();
                String last = found.getString(2);
                return new Reach(found.getLong(1), last == null ? "" : last);
            }
        }

        private String text() {
            return changes + "\n" + last + "\n";
        }
    }

    /**
     * Holds the data against the mark, before anything is written to them.
     *
     * @throws LostChanges when they do not go as far
     */
    void compare(String address) {
        Optional<Reach> known = read();
        if (known.isEmpty()) {
            return;
        }
        if (!Files.exists(folder.resolve(DATA))) {
            throw new LostChanges(known.get(), 0);
        }
        try (Connection connection = DriverManager.getConnection(address);
                Statement statement = connection.createStatement()) {
            long found = hasChanges(connection) ? Reach.of(statement).changes() : 0;
            if (found < known.get().changes()) {
                throw new LostChanges(known.get(), found);
            }
        } catch (SQLException notOpened) {
            // opening it for good tells why
            LOG.debug("the data could not be held against their mark", notOpened);
        }
    }

    private static boolean hasChanges(Connection connection) throws SQLException {
        try (ResultSet found = connection.getMetaData().getTables(null, connection.getSchema(), "audit_line", null)) {
            return found.next();
        }
    }

    /** What was noted last; empty where nothing was, or the mark itself is damaged. */
    Optional<Reach> read() {
        try {
            List<String> lines = Files.readAllLines(folder.resolve(NAME), StandardCharsets.US_ASCII);
            if (lines.size() == 3) {
                Reach reach = new Reach(Long.parseLong(lines.get(0)), lines.get(1));
                if (sum(reach.text()).equals(lines.get(2))) {
                    return Optional.of(reach);
                }
            }
        } catch (IOException | NumberFormatException notThere) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /** Notes how far the data have come; on the disk when it returns. */
    void write(Reach reach) {
        try {
            Path fresh = folder.resolve(NAME + ".new");
            Files.writeString(fresh, reach.text() + sum(reach.text()) + "\n", StandardCharsets.US_ASCII);
            force(fresh);
            Files.move(
                    fresh, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        }
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private static String sum(String text) {
        CRC32 crc = new CRC32();
        crc.update(text.getBytes(StandardCharsets.US_ASCII));
        return Long.toHexString(crc.getValue());
    }
}
