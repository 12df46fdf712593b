package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What coordinators wrote before hazards were codes gets its codes once, from their words. */
class HazardsOfEarlierCropsTest {
    private static final String BEFORE_CODES = "20261126110000";

    @TempDir
    private Path folder;

    @BeforeEach
    void anEarlierGroup() {
        migrate(BEFORE_CODES);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        oca             | toxic, wear gloves               | poisonous | ''       | toxic, wear gloves
        oca             | not poisonous                    | ''        | ''       | not poisonous
        oca             | Not toxic; its berries are poisonous | poisonous | ''   | Not toxic; its berries are poisonous
        oca             | soak overnight                   | ''        | optional | soak overnight
        oca             | dust-fine, on the surface        | ''        | never    | dust-fine, on the surface
        pepper-very-hot | mine                             | burns     | ''       | mine
        foxglove        | poisonous: gloves, label         | poisonous | ''       | ''
        """)
    void words_become_codes_once_and_stay_as_words(
            String crop, String treatment, String hazards, String soak, String words) throws SQLException {
        run("alter table own_crop drop constraint own_crop_made_by_fk");
        run(("insert into own_crop (crop_id, version, kept, name, species, hardiness, weeks_indoors_min,"
                        + " weeks_indoors_max, plant_out_offset_days, plant_out_offset_days_latest, light, treatment, note,"
                        + " source, source_url, emergence, made_by, made_at) values ('%s', 1, true, 'A crop', '', 'tender', 4, 6,"
                        + " 0, 7, '', '%s', '', 'the packet', '', 'reference', '%s', timestamp with time zone '2026-11-26"
                        + " 10:00:00+00')")
                .formatted(crop, treatment, UUID.randomUUID()));

        migrate("latest");

        try (Connection connection = DriverManager.getConnection(url());
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select hazards, soak, treatment from own_crop")) {
            assertThat(row.next()).isTrue();
            assertThat(row.getString("hazards")).isEqualTo(hazards);
            assertThat(row.getString("soak")).isEqualTo(soak);
            assertThat(row.getString("treatment")).isEqualTo(words);
        }
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

    private void run(String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url());
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
