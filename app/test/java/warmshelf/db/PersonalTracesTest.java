package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jooq.ForeignKey;
import org.jooq.Table;
import org.jooq.TableField;
import org.junit.jupiter.api.Test;
import warmshelf.db.generated.DefaultSchema;
import warmshelf.db.generated.Tables;

class PersonalTracesTest {
    @Test
    void each_column_that_names_a_person_is_decided_once() {
        List<String> named = DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                .flatMap(table -> table.getReferences().stream())
                .filter(key -> key.getInverseKey().getTable().equals(Tables.MEMBER))
                .map(ForeignKey::getFields)
                .map(fields -> named(fields.get(0)))
                .distinct()
                .toList();

        assertThat(PersonalTraces.all().stream()
                        .map(PersonalTrace::column)
                        .map(PersonalTracesTest::named)
                        .toList())
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(named);
    }

    /** A text that its writer's erasure empties, a hash, or a word of the program's: a note that comes later has to be decided. */
    @Test
    void each_note_of_a_row_that_names_who_wrote_it_is_decided() {
        List<String> decided = PersonalTraces.notes().stream()
                .map(note -> named(note.text()))
                .distinct()
                .toList();

        assertThat(DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                        .flatMap(Table::fieldStream)
                        .filter(field ->
                                List.of("note", "trouble", "reason", "detail").contains(field.getName()))
                        .map(field -> named((TableField<?, ?>) field))
                        .filter(name -> !decided.contains(name)))
                .as(
                        "what others still need to know: why a frost date, a mat or a request is as it is, and what a place or crop is")
                .containsExactlyInAnyOrder(
                        "access_link.note",
                        "frost_correction.reason",
                        "mat_out.reason",
                        "own_crop.note",
                        "site.note",
                        "space_request.reason");
    }

    private static String named(TableField<?, ?> field) {
        return field.getTable().getName() + "." + field.getName();
    }
}
