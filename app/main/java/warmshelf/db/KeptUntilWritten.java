package warmshelf.db;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What many pages ask of the database, kept until something is written; where other processes may write, for two seconds at most.
 * Safe for use by several threads: none waits for another's reading.
 *
 * @param <K> what is asked about
 */
public final class KeptUntilWritten<K, V> {
    private static final long KEPT_NANOS = Duration.ofSeconds(2).toNanos();
    private static final int MOST_KEPT = 1_000;

    private final Database database;
    private final Function<K, V> reading;
    private final Map<K, Kept<V>> kept = new ConcurrentHashMap<>();

    /** @param reading asks the database anew */
    public KeptUntilWritten(Database database, Function<K, V> reading) {
        this.database = database;
        this.reading = reading;
    }

    private record Kept<V>(long writes, long sinceNanos, V value) {}

    public V get(K key) {
        Kept<V> last = kept.get(key);
        // Counted before reading: what is written meanwhile makes what was read stale at once.
        long writes = database.writes();
        if (last != null && last.writes() == writes && !isOld(last)) {
            return last.value();
        }
        V value = reading.apply(key);
        if (kept.size() >= MOST_KEPT) {
            kept.clear();
        }
        kept.put(key, new Kept<>(writes, System.nanoTime(), value));
        return value;
    }

    private boolean isOld(Kept<V> last) {
        return database.isShared() && System.nanoTime() - last.sinceNanos() >= KEPT_NANOS;
    }
}
