package warmshelf.db;

import java.util.concurrent.atomic.AtomicLong;
import org.jooq.Delete;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jooq.Insert;
import org.jooq.Query;
import org.jooq.TransactionContext;
import org.jooq.TransactionListener;
import org.jooq.Update;

/**
 * Counts what this process writes. The count grows when a statement has written, and once more when its transaction has been
 * committed, so that nothing read in between is taken for the newest.
 */
final class WriteCount implements ExecuteListener, TransactionListener {
    private static final long serialVersionUID = 1L;

    private final AtomicLong count = new AtomicLong();
    // A transaction runs on one thread from its beginning to its end.
    private final transient ThreadLocal<Boolean> wrote = ThreadLocal.withInitial(() -> false);

    long now() {
        return count.get();
    }

    @Override
    public void executeEnd(ExecuteContext ctx) {
        Query query = ctx.query();
        if (query instanceof Insert || query instanceof Update || query instanceof Delete) {
            wrote.set(true);
            count.incrementAndGet();
        }
    }

    @Override
    public void commitEnd(TransactionContext ctx) {
        if (wrote.get()) {
            wrote.remove();
            count.incrementAndGet();
        }
    }

    @Override
    public void rollbackEnd(TransactionContext ctx) {
        wrote.remove();
    }
}
