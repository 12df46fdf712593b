package warmshelf.photo;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos of a group that kept those of packets in a table of their own are all kept in the one table. */
class EarlierPhotosTest {
    private static final String BEFORE_ONE_TABLE = "20261130110000";
    private static final UUID SHARED = UUID.randomUUID();
    private static final UUID OF_PACKET = UUID.randomUUID();
    private static final UUID MEMBER = UUID.randomUUID();
    private static final UUID LOT = UUID.randomUUID();

    @TempDir
    private Path folder;

    @BeforeEach
    void an_earlier_group() throws SQLException {
        migrate(BEFORE_ONE_TABLE);
        run("alter table photo drop constraint photo_entry_fk");
        run("alter table photo drop constraint photo_added_by_fk");
        run("alter table photo drop constraint photo_removed_by_fk");
        run("alter table packet_photo drop constraint packet_photo_added_by_fk");
        run("alter table packet_photo drop constraint packet_photo_removed_by_fk");
        run("alter table lot drop constraint lot_made_by_fk");
        run(("insert into lot (id, crop_id, variety, seed_year, treated, note, made_by, made_at, version)"
                        + " values ('%s', 'pepper', 'Long red', 2026, false, '', '%s', timestamp with time zone"
                        + " '2026-11-26 10:00:00+00', 1)")
                .formatted(LOT, MEMBER));
        run(("insert into photo (id, entry_id, width, height, jpeg, added_by, added_at) values"
                        + " ('%s', '%s', 40, 30, 'ab', '%s', timestamp with time zone '2026-11-26 10:00:00+00')")
                .formatted(SHARED, UUID.randomUUID(), MEMBER));
    }

    @Test
    void a_photo_of_a_packet_is_kept_with_its_lot() throws SQLException {
        packetPhoto(OF_PACKET, "'abc'", "null", "null");

        migrate("latest");

        assertThat(text("select id from photo where lot_id = '" + LOT + "'")).isEqualTo(OF_PACKET.toString());
        assertThat(text("select octet_length(jpeg) from photo where entry_id is null"))
                .isEqualTo("3");
        assertThat(text("select octet_length(jpeg) from photo where id = '" + SHARED + "'"))
                .isEqualTo("2");
        assertThat(text("select count(*) from information_schema.tables where table_name = 'packet_photo'"))
                .isEqualTo("0");
    }

    @Test
    void one_that_was_taken_out_stays_out() throws SQLException {
        packetPhoto(OF_PACKET, "''", "'" + MEMBER + "'", "timestamp with time zone '2026-11-27 10:00:00+00'");

        migrate("latest");

        assertThat(text("select removed_by from photo where id = '" + OF_PACKET + "'"))
                .isEqualTo(MEMBER.toString());
    }

    @Test
    void one_with_the_id_of_a_photo_of_an_entry_gets_another_and_both_are_kept() throws SQLException {
        packetPhoto(SHARED, "'abc'", "null", "null");

        migrate("latest");

        assertThat(text("select octet_length(jpeg) from photo where id = '" + SHARED + "'"))
                .isEqualTo("2");
        assertThat(text("select octet_length(jpeg) from photo where lot_id = '" + LOT + "'"))
                .isEqualTo("3");
    }

    private void packetPhoto(UUID id, String jpeg, String removedBy, String removedAt) throws SQLException {
        run(("insert into packet_photo (id, lot_id, width, height, jpeg, added_by, added_at, removed_by, removed_at)"
                        + " values ('%s', '%s', 40, 30, %s, '%s', timestamp with time zone '2026-11-26 10:00:00+00',"
                        + " %s, %s)")
                .formatted(id, LOT, jpeg, MEMBER, removedBy, removedAt));
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

    private String text(String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url());
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            assertThat(row.next()).isTrue();
            String text = row.getString(1);
            assertThat(row.next()).isFalse();
            return text;
        }
    }
}
