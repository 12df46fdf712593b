package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableField;
import org.junit.jupiter.api.Test;
import warmshelf.db.generated.DefaultSchema;

class TableOwnershipTest {
    /** Hashes that open nothing: of a question put to the planner. */
    private static final Set<String> OPEN_NOTHING = Set.of("season_plan.question_hash");

    @Test
    void each_table_belongs_either_to_the_group_or_to_the_installation() {
        List<Table<?>> named = new ArrayList<>(TableOwnership.ofTheGroup());
        named.addAll(TableOwnership.ofTheInstallation());

        assertThat(named)
                .as("a new table is to be named in TableOwnership, in one of its lists")
                .containsExactlyInAnyOrderElementsOf(DefaultSchema.DEFAULT_SCHEMA.getTables());
    }

    @Test
    void nothing_of_the_group_points_to_what_stays_behind() {
        for (Table<?> table : TableOwnership.ofTheGroup()) {
            assertThat(table.getReferences())
                    .as(table.getName())
                    .allMatch(key ->
                            TableOwnership.isTheGroups(key.getKey().getTable().getName()));
        }
    }

    @Test
    void each_hash_that_travels_is_kept_out_of_the_tables_for_people() {
        assertThat(TableOwnership.ofTheGroup().stream()
                        .flatMap(Table::fieldStream)
                        .filter(field -> field.getName().endsWith("hash"))
                        .filter(field -> !OPEN_NOTHING.contains(named(field)))
                        .toList())
                .hasSize(2)
                .allMatch(field -> TableOwnership.isSecret(tableOf(field), field.getName()));
        assertThat(TableOwnership.isSecret("member", "name")).isFalse();
    }

    private static String named(Field<?> field) {
        return tableOf(field) + "." + field.getName();
    }

    private static String tableOf(Field<?> field) {
        return ((TableField<?, ?>) field).getTable().getName();
    }
}
