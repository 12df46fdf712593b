package warmshelf.db;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;

/**
 * What is where a group is to move in, looked at without changing its tables or rows.
 *
 * @param version of the tables there; null: there are none
 * @param group the name of the group that lives there; null: none does
 */
public record FoundInstallation(
        @Nullable String version, @Nullable String group) {
    private static final FoundInstallation NOTHING = new FoundInstallation(null, null);

    /** Looks into a data folder, which need not be there. */
    public static FoundInstallation inFolder(Path folder) {
        return Files.exists(folder.resolve(FolderMark.DATA)) ? at(DatabaseAddress.ofFile(folder), null, null) : NOTHING;
    }

    /** Looks into the database at a JDBC address. */
    public static FoundInstallation at(String jdbcUrl, @Nullable String user, @Nullable String password) {
        try (Connection connection = user == null
                        ? DriverManager.getConnection(jdbcUrl)
                        : DriverManager.getConnection(jdbcUrl, user, password);
                Statement statement = connection.createStatement()) {
            if (!has(connection, "flyway_schema_history")) {
                return NOTHING;
            }
            String version = first(
                    statement,
                    "select \"version\" from \"flyway_schema_history\" where \"version\" is not null"
                            + " order by \"installed_rank\" desc");
            String group = has(connection, "group_profile") ? first(statement, "select name from group_profile") : null;
            return new FoundInstallation(version, group);
        } catch (SQLException refused) {
            throw new DataAccessException("the database could not be looked at", refused);
        }
    }

    private static boolean has(Connection connection, String table) throws SQLException {
        try (ResultSet found = connection.getMetaData().getTables(null, connection.getSchema(), table, null)) {
            return found.next();
        }
    }

    private static @Nullable String first(Statement statement, String question) throws SQLException {
        try (ResultSet found = statement.executeQuery(question)) {
            return found.next() ? found.getString(1) : null;
        }
    }
}
