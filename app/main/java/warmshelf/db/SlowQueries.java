package warmshelf.db;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Tells the log of questions that took the database long. What was filled into them is left out: it may be about people. The log
 * itself puts the request beside each line.
 */
final class SlowQueries implements ExecuteListener {
    private static final long serialVersionUID = 1L;
    private static final Logger LOG = LoggerFactory.getLogger(SlowQueries.class);
    private static final String BEGUN = "warmshelf.begun";

    private final AtomicLong count = new AtomicLong();
    private volatile long mostNanos = Long.MAX_VALUE;

    void after(Duration most) {
        mostNanos = most.toNanos();
    }

    long count() {
        return count.get();
    }

    @Override
    public void executeStart(ExecuteContext ctx) {
        ctx.data(BEGUN, System.nanoTime());
    }

    @Override
    public void executeEnd(ExecuteContext ctx) {
        if (ctx.data(BEGUN) instanceof Long begun) {
            long nanos = System.nanoTime() - begun;
            if (nanos > mostNanos) {
                count.incrementAndGet();
                LOG.warn("slow: {} ms for {}", TimeUnit.NANOSECONDS.toMillis(nanos), ctx.sql());
            }
        }
    }
}
