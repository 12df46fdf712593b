package warmshelf.operation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import warmshelf.db.ProgramOnDatabase;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/** On PostgreSQL several programs may have the database open, and the page names them. */
class ProgramsPostgresTest {
    @Test
    void each_program_that_has_the_database_open_is_named() {
        try (TestGroup group = TestGroup.open(TestDatabase.postgres())) {
            String self = "process " + ProcessHandle.current().pid();

            assertThat(group.database().programs())
                    .filteredOn(ProgramOnDatabase::thisOne)
                    .singleElement()
                    .satisfies(program -> assertThat(program.name()).endsWith(self));
            assertThat(group.signedIn(group.coordinator()).get("/server").text())
                    .contains("PostgreSQL", "by PostgreSQL’s own tools", self + ": this one");
        }
    }
}
