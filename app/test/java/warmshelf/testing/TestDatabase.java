package warmshelf.testing;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.SQLDialect;
import org.jooq.Table;
import org.jspecify.annotations.Nullable;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import warmshelf.db.Database;
import warmshelf.db.generated.DefaultSchema;

/**
 * A database of a test's own, made by the real migrations and gone when closed.
 *
 * <p>{@link #h2()} always works. {@link #postgres()} takes the server named by the environment variables TEST_JDBC_URL,
 * TEST_JDBC_USER and TEST_JDBC_PASSWORD (a schema of its own in it), else starts one by Docker, else skips the test as
 * {@link Everything} says.
 */
public final class TestDatabase implements AutoCloseable {
    private static @Nullable PostgreSQLContainer container;

    private final Database database;
    private final String address;
    private final Runnable whenClosed;

    private TestDatabase(Database database, String address, Runnable whenClosed) {
        this.database = database;
        this.address = address;
        this.whenClosed = whenClosed;
    }

    public static TestDatabase h2() {
        String name = "test-" + UUID.randomUUID();
        return new TestDatabase(Database.inMemory(name), "jdbc:h2:mem:" + name, () -> {});
    }

    public static TestDatabase postgres() {
        Address server = server();
        String schema = "test_" + UUID.randomUUID().toString().replace("-", "");
        server.run("create schema " + schema);
        return new TestDatabase(
                Database.open(server.inSchema(schema), server.user(), server.password()),
                server.withUser(server.inSchema(schema)),
                () -> server.run("drop schema " + schema + " cascade"));
    }

    public Database database() {
        return database;
    }

    /** The JDBC address by which another process finds it, user and password included. */
    public String address() {
        return address;
    }

    /** Takes every row out of every table, which is quicker than a fresh database for each test. */
    public void empty() {
        List<String> tables = DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                .map(Table::getName)
                .toList();
        if (database.sql().dialect() == SQLDialect.POSTGRES) {
            database.sql().execute("truncate " + String.join(", ", tables) + " cascade");
            return;
        }
        database.sql()
                .execute(tables.stream()
                        .map(table -> "truncate table " + table)
                        .collect(Collectors.joining(
                                "; ", "set referential_integrity false; ", "; set referential_integrity true")));
    }

    @Override
    public void close() {
        database.close();
        whenClosed.run();
    }

    private static Address server() {
        @Nullable String url = System.getenv("TEST_JDBC_URL");
        if (url != null) {
            return new Address(url, System.getenv("TEST_JDBC_USER"), System.getenv("TEST_JDBC_PASSWORD"));
        }
        Everything.require(
                DockerClientFactory.instance().isDockerAvailable(), "a PostgreSQL (TEST_JDBC_URL, or Docker)");
        PostgreSQLContainer started = startedContainer();
        return new Address(started.getJdbcUrl(), started.getUsername(), started.getPassword());
    }

    private static synchronized PostgreSQLContainer startedContainer() {
        PostgreSQLContainer running = container;
        if (running == null) {
            running = new PostgreSQLContainer("postgres:15-alpine");
            running.start();
            container = running;
        }
        return running;
    }

    private record Address(
            String url, @Nullable String user, @Nullable String password) {
        String inSchema(String schema) {
            return url + (url.contains("?") ? "&" : "?") + "currentSchema=" + schema;
        }

        String withUser(String address) {
            return address + (user == null ? "" : "&user=" + user) + (password == null ? "" : "&password=" + password);
        }

        void run(String statement) {
            try (Connection connection = user == null
                            ? DriverManager.getConnection(url)
                            : DriverManager.getConnection(url, user, password);
                    Statement run = connection.createStatement()) {
                run.execute(statement);
            } catch (SQLException broken) {
                throw new IllegalStateException("the PostgreSQL for tests refused: " + statement, broken);
            }
        }
    }
}
