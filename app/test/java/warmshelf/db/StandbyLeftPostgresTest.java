package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import org.junit.jupiter.api.Test;
import warmshelf.testing.TestDatabase;

/** An address with several hosts, and a primary that has become a standby: 25006 is 'read_only_sql_transaction' (PostgreSQL, appendix A). */
class StandbyLeftPostgresTest {
    @Test
    void a_connection_that_may_only_read_is_left_after_the_first_write_that_it_refuses() {
        try (TestDatabase place = TestDatabase.postgres();
                Database database = Database.open(place.address(), null, null)) {
            database.sql().execute("set session characteristics as transaction read only");

            Throwable refused = catchThrowable(() -> database.sql().execute("update site set name = name"));

            assertThat(refused).isNotNull();
            assertThat(DatabaseAway.tellsOf(refused))
                    .as("it may be tried again")
                    .isTrue();
            assertThat(catchThrowable(() -> database.sql().execute("update site set name = name")))
                    .as("by another connection")
                    .isNull();
        }
    }

    @Test
    void of_several_hosts_the_one_that_writes_is_taken() {
        try (TestDatabase place = TestDatabase.postgres();
                Database database = Database.open(severalHosts(place), null, null)) {
            assertThat(database.sql().execute("update site set name = name")).isZero();
        }
    }

    /** Nothing listens on the port of the first. */
    private static String severalHosts(TestDatabase place) {
        return place.address().replaceFirst("//", "//127.0.0.1:1,") + "&targetServerType=primary";
    }
}
