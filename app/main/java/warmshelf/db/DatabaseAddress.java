package warmshelf.db;

import com.zaxxer.hikari.HikariConfig;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Addresses of databases, with what each has to be told to behave as the program wants it. */
final class DatabaseAddress {
    static final int POOL = 8;
    private static final int CONNECTION_TIMEOUT_MS = 5_000;

    // Makes one SQL serve both engines. QUERY_CACHE_SIZE: a page asks some dozens of questions, each worth planning
    // once
    // a connection.
    private static final String H2_OPTIONS =
            ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;QUERY_CACHE_SIZE=128";

    /** Pages are packed when they are written, not only when the file is compacted: a change writes some dozens of them anew. */
    private static final String SMALL_PAGES = ";COMPRESS=TRUE";

    /** Whoever opened it closes it: H2's own closing at the end of the process would come before what is still to be noted. */
    private static final String CLOSED_BY_US = ";DB_CLOSE_ON_EXIT=FALSE";

    static final int LONG_MS = 600_000;
    /** A committed tick is in the file before the phone gets its answer. */
    static final String WRITTEN_AT_ONCE = ";WRITE_DELAY=0";
    /** In the file when it is closed, if not before, and in the order in which it was committed. */
    static final String WRITTEN_TOGETHER = ";WRITE_DELAY=" + LONG_MS;

    private DatabaseAddress() {}

    /** Of the H2 file in a data folder, without saying when what was committed is written to it. */
    static String ofFile(Path folder) {
        return "jdbc:h2:file:" + folder.toAbsolutePath().resolve("warmshelf") + H2_OPTIONS + SMALL_PAGES + CLOSED_BY_US;
    }

    /** Of an H2 database that lives as long as it is open. */
    static String inMemory(String name) {
        return "jdbc:h2:mem:" + name + ";DB_CLOSE_DELAY=-1" + H2_OPTIONS;
    }

    static boolean isH2(String jdbcUrl) {
        return jdbcUrl.startsWith("jdbc:h2:");
    }

    /** The connections that all requests share. */
    static HikariConfig pool(String jdbcUrl, @Nullable String user, @Nullable String password) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(jdbcUrl);
        config.setUsername(user);
        config.setPassword(password);
        config.setMaximumPoolSize(POOL);
        if (!isH2(jdbcUrl)) {
            config.addDataSourceProperty("ApplicationName", ProgramOnDatabase.OWN_NAME);
            config.setExceptionOverride(new StandbyLeft());
        }
        config.setConnectionTimeout(CONNECTION_TIMEOUT_MS);
        return config;
    }
}
