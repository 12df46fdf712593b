package warmshelf.db;

import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Ends what goes on by itself when the program stops. Whatever is being done is done to its end: interrupting a thread that reads or
 * writes the data file closes that file for everybody.
 */
public final class EndOfWork {
    private static final Logger LOG = LoggerFactory.getLogger(EndOfWork.class);

    /** A backup of a large group, or a mail server that does not answer. */
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private EndOfWork() {}

    /** Begins nothing more and waits for what is at work; what takes longer than a minute is left to itself. */
    public static void await(ExecutorService work) {
        work.shutdown();
        try {
            boolean done = work.awaitTermination(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
            if (!done) {
                LOG.warn("something was still at work after {}", PATIENCE);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
