package warmshelf.operation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import warmshelf.db.Database;
import warmshelf.db.PoolUse;
import warmshelf.web.Aside;
import warmshelf.web.HealthPart;
import warmshelf.web.Pages;

/** How the server runs, wired. */
public final class OperationRoom {
    private static final double MILLIS = 1e3;

    private final Pages pages;
    private final RequestFigures figures = new RequestFigures();

    /** By what this installation tells people. */
    public record Sends(boolean letters, boolean notices) {}

    /**
     * @param parts of which problems are told
     * @param backups how they stand, for the page
     * @param newestBackup when the newest was made; empty: there is none
     */
    public OperationRoom(
            Database database,
            List<Supplier<HealthPart>> parts,
            Aside backups,
            Supplier<Optional<Instant>> newestBackup,
            Sends sends,
            Clock clock) {
        this.pages = new ServerPages(database, parts, backups, sends, figures, clock);
        Instant started = clock.instant();
        figures.add("up_seconds", "Since the program started", () -> seconds(started, clock.instant()));
        figures.add(
                "memory_used_bytes",
                "Memory in use",
                () -> (double) Runtime.getRuntime().totalMemory()
                        - Runtime.getRuntime().freeMemory());
        figures.add(
                "memory_most_bytes",
                "Memory that there may be",
                () -> Runtime.getRuntime().maxMemory());
        addDatabase(database);
        figures.add(
                "backup_age_seconds",
                "Since the newest backup was made",
                () -> newestBackup
                        .get()
                        .map(made -> seconds(made, clock.instant()))
                        .orElse(Double.NaN));
        figures.add(
                "problems",
                "What somebody has to see to",
                () -> parts.stream()
                        .mapToInt(part -> part.get().problems().size())
                        .sum());
    }

    private void addDatabase(Database database) {
        pool("active", "Connections to the database at work", database, PoolUse::active);
        pool("idle", "Connections to the database with nothing to do", database, PoolUse::idle);
        pool("waiting", "Requests that wait for a connection", database, PoolUse::waiting);
        figures.add("slow_queries", "Questions that took the database long, since the start", database::slowQueries);
        if (database.folder().isPresent()) {
            figures.add("data_bytes", "Size of the data file", () -> bytes(database));
        }
        database.room().ifPresent(room -> figures.add("disk_free_bytes", "Free on the data file's disk", room::free));
    }

    private void pool(String state, String help, Database database, ToIntFunction<PoolUse> connections) {
        figures.add("connections_" + state, help, () -> connections.applyAsInt(database.pool()));
    }

    private static double seconds(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / MILLIS;
    }

    /** The size of the data file. */
    static long bytes(Database database) {
        try {
            return database.bytes();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    public Pages pages() {
        return pages;
    }

    /** The figures in the text format of Prometheus. */
    public String figures() {
        return figures.text();
    }

    /** What kind of text {@link #figures} is. */
    public String figuresType() {
        return RequestFigures.TYPE;
    }
}
