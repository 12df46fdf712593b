package warmshelf.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import warmshelf.db.Database;

/** Reads a database as it is at one moment, whatever is written meanwhile. */
final class SnapshotStore {
    private SnapshotStore() {}

    /** What is read. */
    interface Reading<T> {
        T of(RowSource rows) throws IOException;
    }

    /**
     * Reads everything as of one moment.
     *
     * @throws UncheckedIOException when what is read cannot be written where it goes
     */
    static <T> T read(Database database, Reading<T> reading) {
        return database.sql().connectionResult(connection -> {
            begin(connection);
            try {
                return reading.of(new RowStore(connection));
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            } finally {
                end(connection);
            }
        });
    }

    /** The pool sets the rest back to what it was when it gets the connection back. */
    private static void begin(Connection connection) throws SQLException {
        boolean isH2 = RowStore.isH2(connection);
        connection.setReadOnly(true);
        // H2 sees one moment at its highest level, PostgreSQL at the one below, which never has to give up
        connection.setTransactionIsolation(
                isH2 ? Connection.TRANSACTION_SERIALIZABLE : Connection.TRANSACTION_REPEATABLE_READ);
        if (isH2) {
            lazy(connection, true);
        }
        connection.setAutoCommit(false);
    }

    private static void end(Connection connection) throws SQLException {
        connection.rollback();
        connection.setAutoCommit(true);
        if (RowStore.isH2(connection)) {
            lazy(connection, false);
        }
    }

    /** Rows as they are read, instead of all of them first. */
    private static void lazy(Connection connection, boolean yes) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("set lazy_query_execution " + (yes ? 1 : 0));
        }
    }
}
