package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import warmshelf.db.generated.DefaultSchema;

class SchemaStoreTest {
    @Test
    void the_program_and_the_database_say_the_same_of_the_tables() {
        ArchiveSchema newest = SchemaStore.newest();

        assertThat(newest.tables())
                .hasSameSizeAs(DefaultSchema.DEFAULT_SCHEMA.getTables())
                .isEqualTo(SchemaStore.at(newest.version()).tables());
    }

    @Test
    void an_earlier_version_has_the_tables_of_its_time() {
        ArchiveSchema earlier = SchemaStore.at("20261130153000");

        assertThat(earlier.tables())
                .extracting(ArchiveTable::name)
                .contains("trial")
                .doesNotContain("archive_file");
    }

    @Test
    void only_a_photo_holds_a_picture_and_one_key_names_it() {
        assertThat(SchemaStore.newest().tables().stream()
                        .filter(ArchiveTable::hasPictures)
                        .map(table -> table.name() + " " + table.key())
                        .toList())
                .containsExactly("photo [id]");
    }

    @Test
    void what_may_point_ahead_may_be_left_empty_at_first() {
        Set<String> tables = new HashSet<>();
        for (ArchiveTable table : SchemaStore.newest().tables()) {
            assertThat(table.pointingAhead()).as(table.name()).allMatch(ArchiveColumn::mayBeEmpty);
            if (!table.pointingAhead().isEmpty()) {
                tables.add(table.name());
            }
        }
        assertThat(tables).contains("lot").doesNotContain("entry", "stay_move");
    }
}
