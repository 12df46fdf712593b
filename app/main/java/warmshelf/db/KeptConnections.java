package warmshelf.db;

import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Connections that stay open until all of them are closed together, whatever becomes of a pool's: while there is one, an H2
 * database stays open, and so do the checks that were made on it.
 */
final class KeptConnections implements DataSource, AutoCloseable {
    private final String jdbcUrl;
    private final @Nullable String user;
    private final @Nullable String password;
    private final List<Connection> kept = new ArrayList<>();

    KeptConnections(String jdbcUrl, @Nullable String user, @Nullable String password) {
        this.jdbcUrl = jdbcUrl;
        this.user = user;
        this.password = password;
    }

    @Override
    public Connection getConnection() throws SQLException {
        Connection connection = user == null
                ? DriverManager.getConnection(jdbcUrl)
                : DriverManager.getConnection(jdbcUrl, user, password);
        kept.add(connection);
        return unclosable(connection);
    }

    private static Connection unclosable(Connection connection) {
        return (Connection) Proxy.newProxyInstance(
                KeptConnections.class.getClassLoader(),
                new Class<?>[] {Connection.class},
                (proxy, method, arguments) -> {
                    if (method.getName().equals("close")) {
                        return null;
                    }
                    try {
                        return method.invoke(connection, arguments);
                    } catch (InvocationTargetException refused) {
                        throw refused.getCause();
                    }
                });
    }

    @Override
    public void close() throws SQLException {
        for (Connection connection : kept) {
            connection.close();
        }
    }

    @Override
    public Connection getConnection(String otherUser, String otherPassword) throws SQLException {
        throw new SQLFeatureNotSupportedException("every connection here has the same user");
    }

    @Override
    public PrintWriter getLogWriter() {
        return new PrintWriter(System.err, false, StandardCharsets.UTF_8);
    }

    @Override
    public void setLogWriter(PrintWriter out) throws SQLException {
        throw new SQLFeatureNotSupportedException("nothing is logged here");
    }

    @Override
    public void setLoginTimeout(int seconds) throws SQLException {
        throw new SQLFeatureNotSupportedException("the driver's own limit counts");
    }

    @Override
    public int getLoginTimeout() {
        return 0;
    }

    @Override
    public Logger getParentLogger() {
        return Logger.getGlobal();
    }

    @Override
    public <T> T unwrap(Class<T> type) throws SQLException {
        throw new SQLFeatureNotSupportedException("there is nothing inside");
    }

    @Override
    public boolean isWrapperFor(Class<?> type) {
        return false;
    }
}
