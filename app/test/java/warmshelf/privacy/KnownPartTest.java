package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.jooq.Field;
import org.jooq.Table;
import org.junit.jupiter.api.Test;
import warmshelf.db.PersonalRows;

/** The words in which the page tells what is known, held against the tables. */
class KnownPartTest {
    @Test
    void every_table_that_holds_something_of_people_is_told_under_one_matter() {
        assertThat(KnownPart.all())
                .extracting(KnownPart::table)
                .containsExactlyInAnyOrderElementsOf(
                        PersonalRows.tables().stream().map(Table::getName).toList());
        assertThat(KnownPart.all()).extracting(KnownPart::matter).contains(KnownMatter.values());
    }

    @Test
    void every_column_that_is_shown_is_one_of_the_table_that_may_be_told() {
        for (Table<?> table : PersonalRows.tables()) {
            List<String> told = Arrays.stream(table.fields())
                    .filter(PersonalRows::isTold)
                    .map(Field::getName)
                    .toList();
            assertThat(told)
                    .as(table.getName())
                    .containsAll(KnownPart.of(table.getName()).shown().keySet());
        }
    }

    @Test
    void no_heading_is_a_columns_name() {
        KnownPart.all()
                .forEach(part -> assertThat(part.shown().values())
                        .as(part.table())
                        .isNotEmpty()
                        .noneMatch(heading -> heading.contains("_")));
    }
}
