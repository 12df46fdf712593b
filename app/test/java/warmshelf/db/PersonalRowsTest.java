package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;

import java.util.ArrayList;
import java.util.List;
import org.jooq.Table;
import org.junit.jupiter.api.Test;
import warmshelf.db.generated.DefaultSchema;
import warmshelf.db.generated.Tables;

class PersonalRowsTest {
    /** A table that comes later fails here until it is decided whether it tells something of a person. */
    @Test
    void each_table_either_tells_something_of_people_or_is_named_as_one_that_does_not() {
        List<Table<?>> decided = new ArrayList<>(PersonalRows.tables());
        decided.addAll(PersonalRows.ofNobody());

        assertThat(decided.stream().distinct().map(Table::getName))
                .containsExactlyInAnyOrderElementsOf(DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                        .map(Table::getName)
                        .toList());
        assertThat(PersonalRows.tables()).doesNotContainAnyElementsOf(PersonalRows.ofNobody());
    }

    /** What belongs to a sowing, a lot or whatever else names its person belongs to that person too. */
    @Test
    void no_table_that_belongs_to_a_sowing_is_left_out() {
        for (Table<?> table : DefaultSchema.DEFAULT_SCHEMA.getTables()) {
            boolean ofSowings = table.getReferences().stream()
                    .anyMatch(key -> key.getInverseKey().getTable().equals(Tables.SOWING));
            if (ofSowings) {
                assertThat(PersonalRows.tables()).as(table.getName()).contains(table);
            }
        }
    }

    @Test
    void what_lets_somebody_in_is_never_told() {
        assertThat(PersonalRows.isTold(MEMBER.PASSPHRASE_HASH)).isFalse();
        assertThat(PersonalRows.isTold(PUSH_ADDRESS.AUTH)).isFalse();
        assertThat(PersonalRows.isTold(MEMBER.POSTCODE)).isTrue();
        assertThat(PersonalRows.namesAPerson(ENTRY.MADE_BY)).isTrue();
    }
}
