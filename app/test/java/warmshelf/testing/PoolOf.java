package warmshelf.testing;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jooq.impl.DataSourceConnectionProvider;
import warmshelf.db.Database;

/** The connections that an open database keeps ready. */
public final class PoolOf {
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(10);

    private final HikariDataSource pool;

    private PoolOf(HikariDataSource pool) {
        this.pool = pool;
    }

    public static PoolOf database(Database database) {
        DataSourceConnectionProvider connections =
                (DataSourceConnectionProvider) database.sql().configuration().connectionProvider();
        return new PoolOf((HikariDataSource) connections.dataSource());
    }

    /** Has the connections closed that nobody uses just now, and the others when they are given back. */
    public void retire() {
        pool.getHikariPoolMXBean().softEvictConnections();
    }

    /** Does at once what happens to every connection after half an hour: all are closed, and others take their place. */
    public void retireAll() {
        try {
            List<Connection> retired = borrowAll();
            Instant latest = Instant.now().plus(LONGEST_WAIT);
            while (!allClosed(retired)) {
                if (Instant.now().isAfter(latest)) {
                    throw new AssertionError("the pool did not close its connections within " + LONGEST_WAIT);
                }
                Thread.onSpinWait();
            }
        } catch (SQLException broken) {
            throw new AssertionError("the connections could not be retired", broken);
        }
    }

    private List<Connection> borrowAll() throws SQLException {
        List<Connection> borrowed = new ArrayList<>();
        List<Connection> underneath = new ArrayList<>();
        for (int number = 0; number < pool.getMaximumPoolSize(); number++) {
            Connection connection = pool.getConnection();
            borrowed.add(connection);
            underneath.add(connection.unwrap(Connection.class));
        }
        retire();
        for (Connection connection : borrowed) {
            connection.close();
        }
        return underneath;
    }

    private static boolean allClosed(List<Connection> connections) throws SQLException {
        for (Connection connection : connections) {
            if (!connection.isClosed()) {
                return false;
            }
        }
        return true;
    }
}
