package warmshelf.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;
import static warmshelf.db.generated.Tables.SITE;

import java.util.UUID;
import org.junit.jupiter.api.Test;

class TestDatabaseTest {
    @Test
    void one_that_is_closed_waits_for_the_next_test_as_the_migrations_left_it() {
        String address;
        try (TestDatabase before = TestDatabase.h2()) {
            address = before.address();
            before.database()
                    .sql()
                    .insertInto(SITE)
                    .values(UUID.randomUUID(), "Cellar", 1, 15, 120, "", 1, null)
                    .execute();
            before.database()
                    .sql()
                    .update(FROST_EVIDENCE_VERSION)
                    .set(FROST_EVIDENCE_VERSION.VERSION, 7L)
                    .execute();
        }

        try (TestDatabase after = TestDatabase.h2()) {
            assertThat(after.address()).isEqualTo(address);
            assertThat(after.database().sql().fetchCount(SITE)).isZero();
            assertThat(after.database()
                            .sql()
                            .fetchSingle(FROST_EVIDENCE_VERSION)
                            .getVersion())
                    .isEqualTo(1);
        }
    }
}
