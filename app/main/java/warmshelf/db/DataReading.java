package warmshelf.db;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.h2.mvstore.MVStoreException;
import org.jspecify.annotations.Nullable;

/** Reads a data file whole: every row of every table, so that what is damaged anywhere among them is found. */
public final class DataReading {
    private static final String HISTORY = "flyway_schema_history";

    private final Statement statement;
    private final List<String> tables;

    private DataReading(Statement statement, List<String> tables) {
        this.statement = statement;
        this.tables = tables;
    }

    /**
     * Reads a copy, not the data that a server has open: opening it puts right what a killed process left, and closing it leaves
     * out what is not needed.
     *
     * @throws UnreadableData when it cannot be opened or read to its end
     */
    public static DataFacts of(Path folder) {
        try (Connection connection = DriverManager.getConnection(DatabaseAddress.ofFile(folder));
                Statement statement = connection.createStatement()) {
            // rows as they are read, instead of all of a table first
            statement.execute("set lazy_query_execution 1");
            DataFacts facts = new DataReading(statement, tables(statement)).read();
            statement.execute("shutdown compact");
            return facts;
        } catch (SQLException | MVStoreException refused) {
            throw new UnreadableData(refused);
        }
    }

    /** How many changes are known to have been made in a folder; empty where that was not noted. */
    public static OptionalLong notedChanges(Path folder) {
        return new FolderMark(folder)
                .read()
                .map(reach -> OptionalLong.of(reach.changes()))
                .orElseGet(OptionalLong::empty);
    }

    /** How many rows each table has, at one moment. */
    static Map<String, Long> rows(Statement statement) throws SQLException {
        String question = String.join(
                " union all ",
                tables(statement).stream()
                        .map(table -> "select '%s', count(*) from \"%s\"".formatted(table, table))
                        .toList());
        Map<String, Long> rows = new TreeMap<>();
        try (ResultSet found = statement.executeQuery(question)) {
            while (found.next()) {
                rows.put(found.getString(1), found.getLong(2));
            }
        }
        return rows;
    }

    private static List<String> tables(Statement statement) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet found = statement.executeQuery("select table_name from information_schema.tables"
                + " where table_schema = 'public' and table_type = 'BASE TABLE' order by table_name")) {
            while (found.next()) {
                tables.add(found.getString(1));
            }
        }
        return tables;
    }

    private DataFacts read() throws SQLException {
        Map<String, Long> rows = new TreeMap<>();
        for (String table : tables) {
            rows.put(table, readAll(table));
        }
        return new DataFacts(
                first("group_profile", "select name from group_profile"),
                first(
                        HISTORY,
                        "select \"version\" from \"" + HISTORY
                                + "\" where \"version\" is not null order by \"installed_rank\" desc"),
                rows.getOrDefault("audit_line", 0L),
                moment("audit_line", "select max(at) from audit_line"),
                rows.getOrDefault("entry", 0L),
                moment("entry", "select max(made_at) from entry"),
                rows);
    }

    private long readAll(String table) throws SQLException {
        long rows = 0;
        try (ResultSet found = statement.executeQuery("select * from \"" + table + "\"")) {
            int columns = found.getMetaData().getColumnCount();
            while (found.next()) {
                rows++;
                for (int column = 1; column <= columns; column++) {
                    found.getObject(column);
                }
            }
        }
        return rows;
    }

    private @Nullable String first(String table, String question) throws SQLException {
        if (!tables.contains(table)) {
            return null;
        }
        try (ResultSet found = statement.executeQuery(question)) {
            return found.next() ? found.getString(1) : null;
        }
    }

    private @Nullable String moment(String table, String question) throws SQLException {
        if (!tables.contains(table)) {
            return null;
        }
        try (ResultSet found = statement.executeQuery(question)) {
            OffsetDateTime at = found.next() ? found.getObject(1, OffsetDateTime.class) : null;
            return at == null
                    ? null
                    : at.toInstant().truncatedTo(ChronoUnit.MILLIS).toString();
        }
    }
}
