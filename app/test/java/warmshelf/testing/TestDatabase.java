package warmshelf.testing;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Result;
import org.jooq.SQLDialect;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import warmshelf.db.Database;
import warmshelf.db.generated.DefaultSchema;

/**
 * A database of a test's own, made by the real migrations. When closed it is emptied and waits for the next test, because migrating
 * costs more than most tests do; one that cannot be emptied is dropped.
 *
 * <p>{@link #h2()} always works. {@link #postgres()} takes the server named by the environment variables TEST_JDBC_URL,
 * TEST_JDBC_USER and TEST_JDBC_PASSWORD (a schema of its own in it), else starts one by Docker, else skips the test as
 * {@link Everything} says.
 */
public final class TestDatabase implements AutoCloseable {
    private static final List<Table<?>> TABLES = childrenFirst();
    private static final Deque<Migrated> H2 = new ArrayDeque<>();
    private static final Deque<Migrated> POSTGRES = new ArrayDeque<>();

    private static final AtomicBoolean TIDIED_AT_THE_END = new AtomicBoolean();
    private static @Nullable PostgreSQLContainer container;

    private final Migrated migrated;
    private final Deque<Migrated> waiting;
    private boolean closed;

    private TestDatabase(Deque<Migrated> waiting, Supplier<Migrated> fresh) {
        Migrated left = waiting.poll();
        this.waiting = waiting;
        this.migrated = left == null ? fresh.get() : left;
    }

    public static TestDatabase h2() {
        return new TestDatabase(H2, TestDatabase::freshH2);
    }

    public static TestDatabase postgres() {
        Address server = server();
        return new TestDatabase(POSTGRES, () -> freshSchema(server));
    }

    private static Migrated freshH2() {
        String name = "test-" + UUID.randomUUID();
        return Migrated.of(Database.inMemory(name), "jdbc:h2:mem:" + name, () -> {});
    }

    private static Migrated freshSchema(Address server) {
        String schema = "test_" + UUID.randomUUID().toString().replace("-", "");
        server.run("create schema " + schema);
        if (TIDIED_AT_THE_END.compareAndSet(false, true)) {
            Runtime.getRuntime().addShutdownHook(new Thread(() -> POSTGRES.forEach(Migrated::drop)));
        }
        return Migrated.of(
                Database.open(server.inSchema(schema), server.user(), server.password()),
                server.withUser(server.inSchema(schema)),
                () -> server.run("drop schema " + schema + " cascade"));
    }

    public Database database() {
        return migrated.database();
    }

    /** The JDBC address by which another process finds it, user and password included. */
    public String address() {
        return migrated.address();
    }

    /** Takes every row out of every table, which is quicker than a fresh database for each test. */
    public void empty() {
        migrated.empty();
    }

    @Override
    public void close() {
        if (closed) {
            return;
        }
        closed = true;
        if (migrated.becomesAsNew()) {
            waiting.push(migrated);
        } else {
            migrated.drop();
        }
    }

    /** Each table before those that its rows point to. */
    private static List<Table<?>> childrenFirst() {
        Set<Table<?>> ordered = new LinkedHashSet<>();
        DefaultSchema.DEFAULT_SCHEMA.getTables().forEach(table -> parentsFirst(table, ordered, new HashSet<>()));
        List<Table<?>> tables = new ArrayList<>(ordered);
        Collections.reverse(tables);
        return tables;
    }

    private static void parentsFirst(Table<?> table, Set<Table<?>> ordered, Set<Table<?>> under) {
        if (!ordered.contains(table) && under.add(table)) {
            table.getReferences().forEach(key -> parentsFirst(key.getKey().getTable(), ordered, under));
            ordered.add(table);
        }
    }

    /** A database with all tables, and the rows that the migrations themselves put in. */
    private record Migrated(Database database, String address, List<Result<?>> firstRows, Runnable whenDropped) {
        static Migrated of(Database database, String address, Runnable whenDropped) {
            List<Result<?>> firstRows = new ArrayList<>();
            for (Table<?> table : filled(database.sql())) {
                // each table after those that its rows point to
                firstRows.add(0, database.sql().fetch(table));
            }
            return new Migrated(database, address, firstRows, whenDropped);
        }

        private static List<Table<?>> filled(DSLContext sql) {
            String question = TABLES.stream()
                    .map(Table::getName)
                    .map(name -> "select '%s' where exists (select 1 from %s)".formatted(name, name))
                    .collect(Collectors.joining(" union all "));
            Set<String> names = new HashSet<>(sql.fetch(question).getValues(0, String.class));
            return TABLES.stream()
                    .filter(table -> names.contains(table.getName()))
                    .toList();
        }

        void empty() {
            // on one connection, and never waiting long for what a test has left open
            database.sql().connection(connection -> {
                DSLContext sql = DSL.using(
                        connection, database.sql().dialect(), database.sql().settings());
                boolean isH2 = sql.dialect() == SQLDialect.H2;
                sql.execute(isH2 ? "set referential_integrity false" : "set lock_timeout = '10s'");
                filled(sql)
                        .forEach(table -> sql.execute((isH2 ? "truncate table " : "delete from ") + table.getName()));
                sql.execute(isH2 ? "set referential_integrity true" : "set lock_timeout = 0");
            });
        }

        /** Whether it could be put back to what it was after the migrations. */
        boolean becomesAsNew() {
            if (!database.answers()) {
                return false;
            }
            try {
                empty();
            } catch (DataAccessException inUse) {
                return false;
            }
            putBackFirstRows();
            return true;
        }

        /** Not tried but done: if it failed unseen, each test would migrate a database of its own. */
        private void putBackFirstRows() {
            firstRows.forEach(rows -> rows.forEach(row -> {
                row.changed(true);
                database.sql().executeInsert((TableRecord<?>) row);
            }));
        }

        void drop() {
            database.close();
            whenDropped.run();
        }
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
