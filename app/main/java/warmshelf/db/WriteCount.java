package warmshelf.db;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.BOARD_LOOK;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SOWING_RESULT;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.SUBMISSION;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jooq.Delete;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jooq.Insert;
import org.jooq.Query;
import org.jooq.Table;
import org.jooq.TransactionContext;
import org.jooq.TransactionListener;
import org.jooq.Update;

/**
 * Counts what this process writes, in all and by table. A count grows when a statement has written, and once more when its
 * transaction has been committed, so that nothing read in between is taken for the newest.
 */
final class WriteCount implements ExecuteListener, TransactionListener {
    private static final long serialVersionUID = 1L;

    private static final Pattern TABLE = Pattern.compile("(?:insert into|update|delete from)\\s+\"?(\\w+)");
    private static final String UNKNOWN = "";
    private static final Set<String> BY_LOOKS =
            names(List.of(ENTRY, SOWING, SOWING_RESULT, STAY, QUARTER_DAY, NEWS, AUDIT_LINE, SUBMISSION, BOARD_LOOK));

    private final AtomicLong count = new AtomicLong();
    private final transient Map<String, AtomicLong> counts = new ConcurrentHashMap<>();
    // A transaction runs on one thread from its beginning to its end, with those inside it.
    private final transient ThreadLocal<AtWork> atWork = ThreadLocal.withInitial(AtWork::new);

    private static final class AtWork {
        private final Set<String> tables = new HashSet<>();
        private int depth;
    }

    long now() {
        return count.get();
    }

    /** Of those tables. */
    long of(Collection<Table<?>> tables) {
        Set<String> names = names(tables);
        return counts.entrySet().stream()
                .filter(each -> names.contains(each.getKey()))
                .mapToLong(each -> each.getValue().get())
                .sum();
    }

    /** Of all tables but those; a statement whose table is not known counts here. */
    long beside(Collection<Table<?>> tables) {
        return besideNamed(names(tables));
    }

    /** Of all tables but those that a look at a sowing writes. */
    long besideLooks() {
        return besideNamed(BY_LOOKS);
    }

    private long besideNamed(Set<String> names) {
        return counts.entrySet().stream()
                .filter(each -> !names.contains(each.getKey()))
                .mapToLong(each -> each.getValue().get())
                .sum();
    }

    private static Set<String> names(Collection<Table<?>> tables) {
        return tables.stream().map(Table::getName).collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public void executeEnd(ExecuteContext ctx) {
        Query query = ctx.query();
        if (query != null ? writes(query) : Arrays.stream(ctx.batchQueries()).anyMatch(WriteCount::writes)) {
            String sql = query != null || ctx.batchSQL().length == 0 ? ctx.sql() : ctx.batchSQL()[0];
            Matcher named = TABLE.matcher(sql == null ? "" : sql);
            String table = named.lookingAt() ? named.group(1) : UNKNOWN;
            if (atWork.get().depth > 0) {
                atWork.get().tables.add(table);
            }
            grow(table);
            count.incrementAndGet();
        }
    }

    private static boolean writes(Query query) {
        return query instanceof Insert || query instanceof Update || query instanceof Delete;
    }

    private void grow(String table) {
        counts.computeIfAbsent(table, first -> new AtomicLong()).incrementAndGet();
    }

    @Override
    public void beginEnd(TransactionContext ctx) {
        atWork.get().depth++;
    }

    @Override
    public void commitEnd(TransactionContext ctx) {
        ended(true);
    }

    @Override
    public void rollbackEnd(TransactionContext ctx) {
        ended(false);
    }

    /** What was written in a transaction within another is there for others when the outer one is committed, and not before. */
    private void ended(boolean kept) {
        AtWork work = atWork.get();
        work.depth--;
        if (work.depth > 0) {
            return;
        }
        atWork.remove();
        if (kept && !work.tables.isEmpty()) {
            work.tables.forEach(this::grow);
            count.incrementAndGet();
        }
    }
}
