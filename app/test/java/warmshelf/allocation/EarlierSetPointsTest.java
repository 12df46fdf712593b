package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Set-points of a group that kept them in whole degrees stay what they are, and what lies there stays tied to them. */
class EarlierSetPointsTest {
    private static final String BEFORE_TENTHS = "20261130090000";

    @TempDir
    private Path folder;

    @Test
    void whole_degrees_stay_what_they_are_and_can_be_turned_to_a_tenth() throws SQLException {
        migrate(BEFORE_TENTHS);
        UUID mat = UUID.randomUUID();
        UUID place = UUID.randomUUID();
        run("alter table mat drop constraint mat_shelf_fk");
        run("alter table quarter_day drop constraint quarter_day_stay_fk");
        run(("insert into mat (id, shelf_id, name, walk_order, places, thermostat_low_c, thermostat_high_c, watts,"
                        + " usual_c, version) values ('%s', '%s', 'M1', 1, 1, 20, 32, 45, 26, 1)")
                .formatted(mat, UUID.randomUUID()));
        run("insert into place (id, kind, mat_id, number) values ('%s', 'mat', '%s', 1)".formatted(place, mat));
        run("insert into mat_day (mat_id, on_day, celsius) values ('%s', date '2027-03-01', 27)".formatted(mat));
        run(("insert into quarter_day (place_id, quarter, on_day, stay_id, kind, mat_id, celsius, low_c, high_c) values"
                        + " ('%s', 1, date '2027-03-01', '%s', 'mat', '%s', 27, 24, 27)")
                .formatted(place, UUID.randomUUID(), mat));

        migrate("latest");

        assertThat(number("select celsius from quarter_day")).isEqualTo("27.0");
        assertThat(number("select celsius from mat_day")).isEqualTo("27.0");
        assertThat(number("select thermostat_low_c + usual_c from mat")).isEqualTo("46.0");
        run("update mat_day set celsius = 27.2");
        assertThat(number("select celsius from quarter_day")).isEqualTo("27.2");
    }

    private String url() {
        return "jdbc:h2:file:" + folder.resolve("group")
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
    }

    private void migrate(String target) {
        Flyway.configure()
                .dataSource(url(), null, null)
                .locations("classpath:db/migration")
                .target(target)
                .load()
                .migrate();
    }

    private String number(String query) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url());
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            assertThat(row.next()).isTrue();
            return row.getBigDecimal(1).toPlainString();
        }
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url());
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
