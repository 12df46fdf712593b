package warmshelf.db;

import java.io.UncheckedIOException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jooq.exception.DataAccessException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Notes every few seconds, and at the end, how far a folder's data have come. What is noted is on the disk by then. */
final class MarkKeeper implements AutoCloseable {
    private static final int EACH_SECONDS = 10;
    private static final Logger LOG = LoggerFactory.getLogger(MarkKeeper.class);

    private final Database database;
    private final FolderMark mark;
    private final ScheduledExecutorService work = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "folder-mark");
        thread.setDaemon(true);
        return thread;
    });
    private long noted = -1;

    private MarkKeeper(Database database, FolderMark mark) {
        this.database = database;
        this.mark = mark;
    }

    static MarkKeeper start(Database database, FolderMark mark) {
        MarkKeeper keeper = new MarkKeeper(database, mark);
        keeper.note();
        var unused = keeper.work.scheduleWithFixedDelay(keeper::note, EACH_SECONDS, EACH_SECONDS, TimeUnit.SECONDS);
        return keeper;
    }

    @Override
    public void close() {
        EndOfWork.await(work);
        note();
    }

    private synchronized void note() {
        try {
            FolderMark.Reach reach = database.sql().connectionResult(connection -> {
                try (var statement = connection.createStatement()) {
                    return FolderMark.Reach.of(statement);
                }
            });
            if (reach.changes() != noted) {
                // a mark beyond what a power cut leaves would keep the group from starting
                database.flush();
                mark.write(reach);
                noted = reach.changes();
            }
        } catch (DataAccessException | UncheckedIOException refused) {
            LOG.warn("how far the data have come could not be noted", refused);
        }
    }
}
