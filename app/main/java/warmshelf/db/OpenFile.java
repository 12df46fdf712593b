package warmshelf.db;

import java.sql.Connection;
import java.sql.SQLException;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.h2.mvstore.FileStore;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.RandomAccessStore;

/** The data file as H2 has it open. After the database has closed itself, the next opening is another. */
final class OpenFile {
    /** Percent of what was written, and of the file. What is fuller is left: more would be moved than is gained. */
    private static final int FULL = 80;

    private static final int STEP_BYTES = 2_000_000;
    /** How long room that is given up is kept from being written over; as H2 has it when nobody says otherwise. */
    private static final int CAREFUL_MS = 45_000;

    private final MVStore store;

    private OpenFile(MVStore store) {
        this.store = store;
    }

    /** The file behind a connection. */
    static OpenFile of(Connection connection) throws SQLException {
        SessionLocal session =
                (SessionLocal) connection.unwrap(JdbcConnection.class).getSession();
        return new OpenFile(session.getDatabase().getStore().getMvStore());
    }

    boolean isClosed() {
        return store.isClosed();
    }

    /** Its size on the disk. */
    long bytes() {
        return store.getFileStore().size();
    }

    /** How much of the file is in use, in percent: the rest was replaced, or given up and not yet used again. */
    int inUse() {
        FileStore<?> file = store.getFileStore();
        return file.getFillRate() * file.getChunksFillRate() / 100;
    }

    /**
     * One small step: writes anew what is left in parts that are mostly replaced, so that these can be used again, and moves parts
     * from the end into what is free before them, so that the end can be cut off. Room is given up at once only here, after what
     * replaced it has been forced onto the disk: a power cut may undo the order in which the rest was written.
     */
    void tidy() {
        FileStore<?> file = store.getFileStore();
        store.setRetentionTime(0);
        try {
            file.compact(FULL, STEP_BYTES);
            store.commit();
            store.sync();
            store.executeFilestoreOperation(file::dropUnusedChunks);
            if (file instanceof RandomAccessStore parts && file.getFillRate() < FULL) {
                parts.compactMoveChunks(FULL, 2L * STEP_BYTES, store);
            }
        } finally {
            store.setRetentionTime(CAREFUL_MS);
        }
    }
}
