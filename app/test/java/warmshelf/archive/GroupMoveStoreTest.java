package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.archive.ArchiveSentences.SAY;

import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.BadInput;
import warmshelf.DatabasePlace;
import warmshelf.db.Database;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

class GroupMoveStoreTest {
    @TempDir
    private Path folder;

    private DatabasePlace place(String name) {
        return DatabasePlace.inFolder("--to", folder.resolve(name));
    }

    @Test
    void a_group_moves_to_postgresql_and_back_with_all_its_rows() {
        try (TestDatabase first = TestDatabase.h2();
                TestDatabase postgres = TestDatabase.postgres()) {
            FullGroup.fill(first.database());
            DatabasePlace from = DatabasePlace.at("--from", first.address(), null, null);
            DatabasePlace there = DatabasePlace.at("--to", postgres.address(), null, null);

            Map<String, GroupMoveStore.Moved> out = GroupMoveStore.move(from, there);
            Map<String, GroupMoveStore.Moved> back = GroupMoveStore.move(there, place("back"));

            assertThat(back).isEqualTo(out);
            assertThat(rows(out, "access_link")).isPositive();
            assertThat(rows(out, "photo")).isEqualTo(5);
            try (Database moved = place("back").open()) {
                assertThat(SchemaStore.newest().tables())
                        .allSatisfy(table -> assertThat(moved.sql().fetchCount(DSL.table(table.name())))
                                .as(table.name())
                                .isEqualTo((int) rows(out, table.name())));
            }
        }
    }

    private static long rows(Map<String, GroupMoveStore.Moved> moved, String table) {
        return Objects.requireNonNull(moved.get(table)).rows();
    }

    @Test
    void where_a_group_lives_none_moves_in_and_from_nowhere_none_moves_out() {
        try (TestGroup group = TestGroup.open();
                TestDatabase empty = TestDatabase.h2()) {
            DatabasePlace full = DatabasePlace.at("--from", addressOf(group), null, null);

            assertThatThrownBy(() -> GroupMoveStore.move(full, full))
                    .isInstanceOf(BadInput.class)
                    .hasMessage(SAY.groupThere(TestGroup.NAME));
            assertThatThrownBy(() ->
                            GroupMoveStore.move(DatabasePlace.at("--from", empty.address(), null, null), place("new")))
                    .isInstanceOf(BadInput.class)
                    .hasMessage(SAY.noGroup());
        }
        assertThat(folder.resolve("new")).doesNotExist();
    }

    private static String addressOf(TestGroup group) {
        return group.database()
                .sql()
                .connectionResult(connection -> connection.getMetaData().getURL());
    }
}
