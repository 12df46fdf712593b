package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.testing.MutableClock;
import warmshelf.testing.PoolOf;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/**
 * A pool retires each connection after half an hour; whatever the first of them did for the tables must not go with it. Each
 * write here is watched by a check that a migration made.
 */
class RetiredConnectionsTest {
    @TempDir
    private Path folder;

    @Test
    void a_file_made_in_this_run_can_be_written_to_after_all_its_first_connections_are_gone() {
        try (Database database = Database.inFolder(folder)) {
            writesGoOn(database);
        }
    }

    @Test
    void a_file_opened_again_can_be_written_to_after_all_its_first_connections_are_gone() {
        Database.inFolder(folder).close();
        try (Database database = Database.inFolder(folder)) {
            writesGoOn(database);
        }
    }

    @Test
    void a_database_in_memory_can_be_written_to_after_all_its_first_connections_are_gone() {
        try (Database database = Database.inMemory("retired-" + UUID.randomUUID())) {
            writesGoOn(database);
        }
    }

    @Test
    void an_h2_address_given_by_hand_can_be_written_to_after_all_its_first_connections_are_gone() {
        String file = folder.resolve("by-hand").toAbsolutePath().toString();
        try (Database database = Database.open(
                "jdbc:h2:file:" + file + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
                null,
                null)) {
            writesGoOn(database);
        }
    }

    @Test
    void postgresql_can_be_written_to_after_all_its_first_connections_are_gone() {
        try (TestDatabase place = TestDatabase.postgres()) {
            writesGoOn(place.database());
        }
    }

    /** A pool does so when the machine's clock was put back. */
    @Test
    void a_file_stays_open_while_all_connections_of_the_pool_are_gone_at_once() {
        try (Database database = Database.inFolder(folder)) {
            Object before = oldestSession(database);

            PoolOf.database(database).retireAll();

            assertThat(oldestSession(database)).isEqualTo(before);
        }
    }

    private static Object oldestSession(Database database) {
        return database.sql().fetchValue("select min(session_start) from information_schema.sessions");
    }

    @Test
    void a_check_still_refuses_what_it_is_there_to_refuse() {
        try (Database database = Database.inFolder(folder)) {
            PoolOf.database(database).retireAll();

            assertThatThrownBy(() -> database.sql()
                            .execute("insert into short_code (code, kind, subject_id, made_by, made_at)"
                                    + " values ('ABCD', 'crop', random_uuid(), random_uuid(), current_timestamp)"))
                    .hasStackTraceContaining("Check constraint violation");
        }
    }

    private static void writesGoOn(Database database) {
        MutableClock clock = new MutableClock(TestGroup.MORNING);
        Audit audit = new Audit(clock);
        MemberStore members = new MemberStore(database, audit);
        LotStore lots = new LotStore(database, audit);
        LinkStore links = new LinkStore(database, audit);
        UUID tom = members.add(
                database.sql(), new NewMember("Tom Okafor", "US", "55804", "not a hash"), false, "for a test");

        PoolOf.database(database).retireAll();

        assertThatCode(() -> {
                    members.add(
                            database.sql(),
                            new NewMember("Mei Larsson", "US", "55806", "not a hash"),
                            true,
                            "for a test");
                    lots.add(new NewLot("pepper", "Harbour Light", 2025, 40, tom, true, ""), tom);
                    links.makeOpening();
                })
                .doesNotThrowAnyException();
        assertThat(lots.withSeed()).hasSize(1);
    }
}
