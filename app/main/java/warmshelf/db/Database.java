package warmshelf.db;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.jooq.DSLContext;
import org.jooq.ExecuteListener;
import org.jooq.Field;
import org.jooq.SQLDialect;
import org.jooq.Table;
import org.jooq.TransactionListener;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;
import org.jooq.impl.DefaultConfiguration;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The group's database: H2 in a file, or PostgreSQL by its JDBC address. Opening it migrates it. */
public final class Database implements AutoCloseable {
    /** The name of the data file in its folder. */
    public static final String FILE = FolderMark.DATA;
    /** The name of the small file beside it that tells how far the data had come. */
    public static final String MARK = FolderMark.NAME;

    private static final Logger LOG = LoggerFactory.getLogger(Database.class);

    private final HikariDataSource pool;
    private final KeptConnections kept;
    private final DSLContext sql;
    private final WriteCount writes = new WriteCount();
    private final SlowQueries slow = new SlowQueries();
    private final @Nullable String lastWords;
    private @Nullable MarkKeeper marks;
    private @Nullable Path folder;
    private final @Nullable DiskRoom room;
    private @Nullable FileKeeper keeper;

    private Database(
            HikariDataSource pool,
            KeptConnections kept,
            SQLDialect dialect,
            @Nullable String lastWords,
            @Nullable DiskRoom room) {
        this.pool = pool;
        this.kept = kept;
        this.lastWords = lastWords;
        this.room = room;
        Settings settings = new Settings()
                .withRenderSchema(false)
                .withRenderQuotedNames(RenderQuotedNames.EXPLICIT_DEFAULT_UNQUOTED);
        ExecuteListener[] listeners = room == null
                ? new ExecuteListener[] {writes, slow}
                : new ExecuteListener[] {writes, slow, new DiskGuard(room, this::connectAnew)};
        this.sql = DSL.using(new DefaultConfiguration()
                .set(pool)
                .set(dialect)
                .set(settings)
                .set(listeners)
                .set((TransactionListener) writes));
    }

    /** Opens the H2 file in a data folder, and makes both where they are missing. Closing it compacts the file. */
    public static Database inFolder(Path folder) {
        return inFolder(folder, MigrationVersion.LATEST);
    }

    /** The same with its tables as an earlier program had them. */
    public static Database inFolder(Path folder, String version) {
        return inFolder(folder, MigrationVersion.fromVersion(version));
    }

    private static Database inFolder(Path folder, MigrationVersion version) {
        String url = DatabaseAddress.ofFile(folder);
        FolderMark mark = new FolderMark(folder);
        mark.compare(url + DatabaseAddress.WRITTEN_AT_ONCE);
        DiskRoom room = DiskRoom.of(folder);
        Database database = open(
                url + DatabaseAddress.WRITTEN_AT_ONCE,
                null,
                null,
                url + DatabaseAddress.WRITTEN_TOGETHER,
                "shutdown compact",
                version,
                room);
        database.folder = folder;
        database.marks = MarkKeeper.start(database, mark);
        database.keeper = FileKeeper.start(database.kept, room);
        return database;
    }

    /**
     * Moves the data of a folder that nobody has open into another, in one step, and their mark after them. What lay there, with
     * its mark, is replaced.
     */
    public static void move(Path from, Path to) throws IOException {
        try (FileChannel written = FileChannel.open(from.resolve(FolderMark.DATA), StandardOpenOption.WRITE)) {
            written.force(true);
        }
        // the mark of what lay there would tell of lost changes
        Files.deleteIfExists(to.resolve(FolderMark.NAME));
        for (String file : List.of(FolderMark.DATA, FolderMark.NAME)) {
            Files.move(
                    from.resolve(file),
                    to.resolve(file),
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** An empty H2 database that lives as long as it is open. */
    public static Database inMemory(String name) {
        return inMemory(name, MigrationVersion.LATEST);
    }

    /** The same with its tables as an earlier program had them. */
    public static Database inMemory(String name, String version) {
        return inMemory(name, MigrationVersion.fromVersion(version));
    }

    private static Database inMemory(String name, MigrationVersion version) {
        return open(DatabaseAddress.inMemory(name), null, null, null, "shutdown", version, null);
    }

    /** Opens any JDBC address; user and password may also stand in the address. */
    public static Database open(String jdbcUrl, @Nullable String user, @Nullable String password) {
        return open(jdbcUrl, user, password, MigrationVersion.LATEST);
    }

    /** The same with its tables as an earlier program had them; they are not to be newer already. */
    public static Database open(String jdbcUrl, @Nullable String user, @Nullable String password, String version) {
        return open(jdbcUrl, user, password, MigrationVersion.fromVersion(version));
    }

    private static Database open(
            String jdbcUrl, @Nullable String user, @Nullable String password, MigrationVersion version) {
        return open(jdbcUrl, user, password, DatabaseAddress.isH2(jdbcUrl) ? null : jdbcUrl, null, version, null);
    }

    /**
     * Migrates, then opens. H2 ties the checks that a migration makes to the connection it ran on, and refuses every write they
     * watch once that one is gone. Our own file closes with the last connection that migrated it, and opening it anew reads the
     * checks from the file. Any other H2 database may stay open in between, or would be lost by closing; there the connections
     * that migrated it are kept.
     *
     * <p>One connection beside the pool is kept in any case: a pool that retires all of its own at once, as it does when the
     * machine's clock was put back, would close the file under everybody's feet.
     *
     * @param migratedAt the address by which it is migrated and closed first; null where those connections are kept
     * @param room on the disk where its file lies; null: it has none of ours
     */
    private static Database open(
            String jdbcUrl,
            @Nullable String user,
            @Nullable String password,
            @Nullable String migratedAt,
            @Nullable String lastWords,
            MigrationVersion version,
            @Nullable DiskRoom room) {
        KeptConnections kept = new KeptConnections(jdbcUrl, user, password);
        try {
            FluentConfiguration flyway = Migrations.configuration().target(version);
            (migratedAt == null ? flyway.dataSource(kept) : flyway.dataSource(migratedAt, user, password))
                    .load()
                    .migrate();
            if (DatabaseAddress.isH2(jdbcUrl) && migratedAt != null) {
                kept.getConnection();
            }
            HikariDataSource pool = new HikariDataSource(DatabaseAddress.pool(jdbcUrl, user, password));
            return new Database(
                    pool, kept, DatabaseAddress.isH2(jdbcUrl) ? SQLDialect.H2 : SQLDialect.POSTGRES, lastWords, room);
        } catch (RuntimeException notOpened) {
            letGo(kept);
            throw notOpened;
        } catch (SQLException notOpened) {
            letGo(kept);
            throw new DataAccessException("the database could not be opened", notOpened);
        }
    }

    private static void letGo(KeptConnections kept) {
        try {
            kept.close();
        } catch (SQLException refused) {
            LOG.warn("a connection could not be closed", refused);
        }
    }

    public DSLContext sql() {
        return sql;
    }

    /**
     * Grows with everything that this process writes: what was read before it grew may be out of date. Where the database is
     * {@linkplain #isShared() shared}, other processes are not counted: there, what is kept must also be let go after a while.
     */
    public long writes() {
        return writes.now();
    }

    /** The same of some tables. */
    public long writesTo(Collection<Table<?>> tables) {
        return writes.of(tables);
    }

    /** The same of all tables but some. */
    public long writesBeside(Collection<Table<?>> tables) {
        return writes.beside(tables);
    }

    /**
     * The same of all but what a look at a sowing writes, many times a minute while people tick: for what does not hang on any of
     * that, such as who is signed in.
     */
    public long writesBesideLooks() {
        return writes.besideLooks();
    }

    /**
     * The rows of a table whose key is among those given. The keys are joined as a table of their own: with a list of values in
     * a condition H2 compares every row it finds with every value (8,800 entries of 560 sowings: 170 ms, joined 22 ms).
     */
    public static Table<?> listed(Table<?> table, Field<UUID> key, Collection<UUID> keys) {
        Table<?> listed = DSL.unnest(keys.toArray(UUID[]::new)).as("listed", "listed_id");
        return table.join(listed).on(key.eq(DSL.field(DSL.name("listed", "listed_id"), UUID.class)));
    }

    /** Whether other processes may write too. An H2 file is locked by the one process that has it open. */
    public boolean isShared() {
        return sql.dialect() != SQLDialect.H2;
    }

    /**
     * Has what was committed brought onto the disk itself, so that not even a power cut loses it. PostgreSQL does so at each
     * commit; an H2 file is only written then.
     */
    public void flush() {
        if (!isShared()) {
            sql.execute("checkpoint sync");
        }
    }

    /**
     * Does much work at once that nobody waits for: what is committed reaches an H2 file at the end, together, and is lost with
     * the process before.
     */
    public void together(Runnable work) {
        if (isShared()) {
            work.run();
            return;
        }
        sql.execute("set write_delay " + DatabaseAddress.LONG_MS);
        try {
            work.run();
        } finally {
            sql.execute("set write_delay 0");
            flush();
        }
    }

    /** The folder in which its file lies; empty where it lies elsewhere. */
    public Optional<Path> folder() {
        return Optional.ofNullable(folder);
    }

    /** The room on the disk where its file lies; empty where it lies elsewhere. */
    public Optional<DiskRoom> room() {
        return Optional.ofNullable(room);
    }

    /** After it has closed itself: the connections to what is gone are let go of, and the next ones open the file anew. */
    private void connectAnew() {
        pool.getHikariPoolMXBean().softEvictConnections();
    }

    /** The size of its file. */
    public long bytes() throws IOException {
        return Files.size(folder().orElseThrow().resolve(FILE));
    }

    /** How many rows each table has, at one moment. */
    public Map<String, Long> rows() {
        return sql.connectionResult(connection -> {
            try (Statement statement = connection.createStatement()) {
                return DataReading.rows(statement);
            }
        });
    }

    /**
     * Writes the data file as it is at one moment into a zip, whatever is written meanwhile.
     *
     * @throws UnreadableData when it cannot be read, or the zip not be written
     */
    public void copyTo(Path zip) {
        try {
            sql.execute(
                    "backup to '%s'".formatted(zip.toAbsolutePath().toString().replace("'", "''")));
        } catch (DataAccessException refused) {
            throw new UnreadableData(refused);
        }
    }

    /** From now on the log tells of what takes longer than this. */
    public void slowAfter(Duration most) {
        slow.after(most);
    }

    /** How many questions were slow since the start. */
    public long slowQueries() {
        return slow.count();
    }

    /** How many connections are at work, how many wait for work, and how many requests wait for one. */
    public PoolUse pool() {
        HikariPoolMXBean now = pool.getHikariPoolMXBean();
        return new PoolUse(
                now.getActiveConnections(),
                now.getIdleConnections(),
                now.getThreadsAwaitingConnection(),
                DatabaseAddress.POOL);
    }

    /** The name and version of the database, such as 'PostgreSQL 15.6'. */
    public String product() {
        return sql.connectionResult(connection -> connection.getMetaData().getDatabaseProductName() + " "
                + connection.getMetaData().getDatabaseProductVersion());
    }

    /** The programs that have this database open, the longest first; only a shared one knows them. */
    public List<ProgramOnDatabase> programs() {
        return isShared() ? ProgramOnDatabase.all(sql) : List.of();
    }

    /** Whether the database answers a question just now. */
    public boolean answers() {
        try {
            return sql.selectOne().fetchOne() != null;
        } catch (DataAccessException silent) {
            return false;
        }
    }

    @Override
    public void close() {
        if (pool.isClosed()) {
            return;
        }
        if (keeper != null) {
            keeper.close();
        }
        if (marks != null) {
            marks.close();
        }
        pool.close();
        letGo(kept);
        if (lastWords != null) {
            sayLastWords(lastWords);
        }
    }

    // On a connection of its own, because the pool cannot take back one whose database is gone.
    private void sayLastWords(String words) {
        try (Connection connection = DriverManager.getConnection(pool.getJdbcUrl());
                Statement statement = connection.createStatement()) {
            statement.execute(words);
        } catch (SQLException refused) {
            LOG.warn("the database was closed without '{}'", words, refused);
        }
    }
}
