package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import java.io.IOException;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** Fills an empty installation with the rows of a group, reads them back, and only then lets them count. */
final class TakingInStore {
    private final Connection connection;
    private final ArchiveSchema schema;
    private final List<ArchiveTable> tables;
    private final RowSource rows;

    private TakingInStore(Connection connection, ArchiveSchema schema, List<ArchiveTable> tables, RowSource rows) {
        this.connection = connection;
        this.schema = schema;
        this.tables = tables;
        this.rows = rows;
    }

    /** The SHA-256 of what is written, as where it comes from. */
    interface Expected {
        @Nullable
        String rows(ArchiveTable table);

        @Nullable
        String picture(String name);
    }

    /**
     * Fills it, in one transaction.
     *
     * @param schema the tables of the database, in this very form
     * @param tables those that are filled, each after those that its rows point to
     * @param lastCounted the highest number that the database counted up, by table
     * @throws BadInput when the database does not take a row, or gives it back otherwise; nothing is written then
     */
    static void fill(
            Connection connection,
            ArchiveSchema schema,
            List<ArchiveTable> tables,
            RowSource rows,
            Map<String, Long> lastCounted,
            Expected expected)
            throws SQLException, IOException {
        TakingInStore taking = new TakingInStore(connection, schema, tables, rows);
        connection.setAutoCommit(false);
        try {
            taking.countOn(lastCounted);
            taking.clear();
            for (ArchiveTable table : tables) {
                taking.write(table);
            }
            RowStore written = new RowStore(connection);
            for (ArchiveTable table : tables) {
                taking.readBack(table, written, expected);
            }
            connection.commit();
        } finally {
            connection.rollback();
            connection.setAutoCommit(true);
        }
    }

    /** What is kept from now on is counted after what was kept. First, because H2 ends a transaction by it. */
    private void countOn(Map<String, Long> lastCounted) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (ArchiveTable table : tables) {
                if (table.counted().isPresent()) {
                    statement.execute("alter table %s alter column %s restart with %d"
                            .formatted(
                                    table.name(),
                                    table.counted().get().name(),
                                    lastCounted.getOrDefault(table.name(), 0L) + 1));
                }
            }
        }
    }

    /** Takes out what migrations put in, and what a server that nobody opened has written, such as the link that opens it. */
    private void clear() throws SQLException {
        List<ArchiveTable> childrenFirst = new ArrayList<>(schema.tables());
        Collections.reverse(childrenFirst);
        try (Statement statement = connection.createStatement()) {
            for (ArchiveTable table : childrenFirst) {
                statement.execute("delete from " + table.name());
            }
        }
    }

    private void write(ArchiveTable table) throws SQLException, IOException {
        try (InsertStore insert = InsertStore.into(table, connection, rows)) {
            rows.forEach(table, insert);
            insert.finish();
            if (!table.pointingAhead().isEmpty()) {
                rows.forEach(table, insert::pointAhead);
                insert.finish();
            }
        } catch (InsertStore.NotTaken refused) {
            throw new BadInput(SAY.rowsDoNotFit(table.name(), refused.why()));
        }
    }

    private void readBack(ArchiveTable table, RowStore written, Expected expected) throws IOException {
        MessageDigest digest = Digests.sha256();
        MessageDigest picture = Digests.sha256();
        try (RowJson json = new RowJson(table, new DigestOutputStream(OutputStream.nullOutputStream(), digest))) {
            written.forEach(table, row -> {
                json.row(row);
                for (String name : Pictures.in(table, row)) {
                    picture.update(written.picture(name));
                    if (!Digests.hex(picture).equals(expected.picture(name))) {
                        throw new BadInput(SAY.readBackDiffers(name));
                    }
                }
            });
        }
        if (!Digests.hex(digest).equals(expected.rows(table))) {
            throw new BadInput(SAY.readBackDiffers(table.name()));
        }
    }
}
