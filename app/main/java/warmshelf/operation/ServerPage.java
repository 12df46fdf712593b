package warmshelf.operation;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.db.PoolUse;
import warmshelf.web.HealthPart;

/**
 * How the server runs.
 *
 * @param problems what somebody has to see to; empty: all is well
 * @param memoryMegabytes that are in use
 * @param memoryMost megabytes that there may be
 * @param megabytes the size of the data file in words; null: the data lie in a database server
 * @param free gigabytes on its disk in words; null where that is not ours
 * @param daysLeft until the disk is full at the rate of the last days; -1: nothing can be said
 * @param letters null: none are sent here
 * @param notices null: none are sent here
 * @param plans that are being worked out
 * @param files that are being read
 * @param programs that have the database open; empty: this one alone
 */
public record ServerPage(
        List<HealthPart.Problem> problems,
        String version,
        LocalDateTime startedAt,
        String startedAgo,
        String java,
        long memoryMegabytes,
        long memoryMost,
        String product,
        @Nullable String megabytes,
        @Nullable String free,
        long daysLeft,
        @Nullable MessageCount letters,
        @Nullable MessageCount notices,
        int plans,
        int files,
        List<Node> programs,
        PoolUse pool,
        long slowQueries,
        long requests,
        long faults,
        int days) {

    /**
     * A program that has the database open.
     *
     * @param since a connection that it has open
     */
    public record Node(String name, LocalDateTime since, boolean thisOne) {}

    public ServerPage {
        problems = List.copyOf(problems);
        programs = List.copyOf(programs);
    }
}
