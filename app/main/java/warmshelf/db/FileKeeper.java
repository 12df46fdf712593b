package warmshelf.db;

import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.util.concurrent.TimeUnit;
import org.h2.mvstore.MVStoreException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the data file from growing by what is no longer in use: each change leaves the pages behind that it replaced, some dozen
 * kilobytes. Tidies in small steps while others write, and after a kill what was left lying then.
 */
final class FileKeeper implements AutoCloseable {
    private static final int EACH_MS = 50;
    /** Below this a file is small whatever is in it. */
    private static final long SMALL = 2_000_000;
    /** Percent. With less of the file in use it is tidied. */
    private static final int LEAST_IN_USE = 60;
    /** Room on the disk that a step may take before it gives room back, many times over. */
    private static final long NEEDED = 32_000_000;

    private static final Logger LOG = LoggerFactory.getLogger(FileKeeper.class);

    private final KeptConnections kept;
    private final DiskRoom room;
    private final Thread thread = new Thread(this::keep, "file-keeper");
    private volatile boolean ended;
    private @Nullable OpenFile file;

    private FileKeeper(KeptConnections kept, DiskRoom room) {
        this.kept = kept;
        this.room = room;
    }

    static FileKeeper start(KeptConnections kept, DiskRoom room) {
        FileKeeper keeper = new FileKeeper(kept, room);
        keeper.thread.setDaemon(true);
        keeper.thread.start();
        return keeper;
    }

    private void keep() {
        while (!ended) {
            try {
                TimeUnit.MILLISECONDS.sleep(EACH_MS);
                look();
            } catch (InterruptedException nobodyDoes) {
                return;
            } catch (MVStoreException | SQLException | UncheckedIOException refused) {
                LOG.warn("the data file could not be tidied", refused);
            }
        }
    }

    private void look() throws SQLException {
        // opening a file on a full disk, or tidying it there, may take the last of the room
        if (room.free() < NEEDED) {
            return;
        }
        OpenFile now = file;
        if (now == null || now.isClosed()) {
            now = OpenFile.of(kept.getConnection());
            file = now;
        }
        if (now.bytes() > SMALL && now.inUse() < LEAST_IN_USE) {
            now.tidy();
        }
    }

    /** Not by interrupting: that would close the file in the middle of a write. */
    @Override
    public void close() {
        ended = true;
        try {
            thread.join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
