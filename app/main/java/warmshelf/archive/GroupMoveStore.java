package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.DatabasePlace;
import warmshelf.db.Database;

/** Moves an installation whole, sign-ins and devices included, from one database to another. Where it was, it stays as it is. */
final class GroupMoveStore {
    private GroupMoveStore() {}

    /**
     * What was moved of a table.
     *
     * @param sha256 of its rows as a file would hold them, in hexadecimal digits; the same on both sides
     */
    record Moved(long rows, String sha256) {}

    /**
     * Moves it.
     *
     * @return each table by name, in the order in which they were filled
     * @throws BadInput when no group is there to move, or one lives where it is to go; nothing is changed then
     */
    static Map<String, Moved> move(DatabasePlace from, DatabasePlace to) {
        if (from.look().group() == null) {
            throw new BadInput(SAY.noGroup());
        }
        ArchiveSchema schema = SchemaStore.newest();
        ArrivalStore.refuseTaken(to, schema.version());
        try (Database there = from.open()) {
            return SnapshotStore.read(there, rows -> {
                Read read = Read.all(schema, rows);
                ArrivalStore.fill(
                        to,
                        schema.version(),
                        connection ->
                                TakingInStore.fill(connection, schema, schema.tables(), rows, read.lastCounted, read),
                        filled -> {});
                return read.moved;
            });
        }
    }

    /** What the rows were where they come from. */
    private static final class Read implements TakingInStore.Expected {
        private final Map<String, Moved> moved = new LinkedHashMap<>();
        private final Map<String, Long> lastCounted = new HashMap<>();
        private final RowSource rows;

        private Read(RowSource rows) {
            this.rows = rows;
        }

        static Read all(ArchiveSchema schema, RowSource rows) throws IOException {
            Read read = new Read(rows);
            for (ArchiveTable table : schema.tables()) {
                read.add(table);
            }
            return read;
        }

        private void add(ArchiveTable table) throws IOException {
            MessageDigest digest = Digests.sha256();
            CountedRows counted = new CountedRows(table);
            try (RowJson json = new RowJson(table, new DigestOutputStream(OutputStream.nullOutputStream(), digest))) {
                rows.forEach(table, row -> {
                    counted.row(row);
                    json.row(row);
                });
            }
            moved.put(table.name(), new Moved(counted.rows(), Digests.hex(digest)));
            lastCounted.put(table.name(), counted.lastCounted());
        }

        @Override
        public @Nullable String rows(ArchiveTable table) {
            Moved read = moved.get(table.name());
            return read == null ? null : read.sha256();
        }

        @Override
        public String picture(String name) {
            try {
                MessageDigest digest = Digests.sha256();
                digest.update(rows.picture(name));
                return Digests.hex(digest);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }
}
