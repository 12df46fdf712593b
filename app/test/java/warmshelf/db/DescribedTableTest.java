package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import warmshelf.testing.TestDatabase;

/** Whoever adds a table or column says what it means, in the migration that makes it. */
class DescribedTableTest {
    /** Names that say all there is to say, in whichever table they stand. */
    private static final Set<String> PLAIN = Set.of(
            "id",
            "name",
            "note",
            "version",
            "latitude",
            "longitude",
            "made_by",
            "made_at",
            "added_by",
            "added_at",
            "asked_by",
            "asked_at",
            "moved_by",
            "moved_at",
            "noted_by",
            "noted_at",
            "set_by",
            "set_at",
            "started_by",
            "started_at");

    @Test
    void every_table_says_what_a_row_of_it_is() {
        assertThat(DescribedTable.all()).hasSizeGreaterThan(60);
        assertThat(DescribedTable.all().stream()
                        .filter(table -> !table.about().endsWith("."))
                        .map(DescribedTable::name))
                .isEmpty();
    }

    @Test
    void every_column_says_what_it_means_unless_its_name_or_the_row_it_leads_to_does() {
        assertThat(columns()
                        .filter(each -> each.column().about().isEmpty())
                        .filter(each -> !PLAIN.contains(each.column().name()) && !leadsWhereItSays(each.column()))
                        .map(Of::words))
                .isEmpty();
    }

    @Test
    void what_may_be_empty_says_what_that_means() {
        assertThat(columns()
                        .filter(each -> each.column().mayBeEmpty()
                                && !each.column().about().contains("Empty: "))
                        .map(Of::words))
                .isEmpty();
        assertThat(columns().filter(each -> each.column().mayBeEmpty())).hasSizeGreaterThan(80);
    }

    @Test
    void what_is_counted_in_degrees_says_which() {
        assertThat(columns()
                        .filter(each -> each.column().name().matches(".*_c|celsius.*|.*_celsius"))
                        .filter(each -> !each.column().about().contains("°C"))
                        .map(Of::words))
                .isEmpty();
        assertThat(columns().filter(each -> each.column().about().contains("°C")))
                .hasSizeGreaterThan(20);
    }

    @Test
    void h2_keeps_the_same_words() {
        try (TestDatabase place = TestDatabase.h2()) {
            assertThat(kept(place)).containsAllEntriesOf(described());
        }
    }

    @Test
    void postgresql_keeps_the_same_words() {
        try (TestDatabase place = TestDatabase.postgres()) {
            assertThat(kept(place)).containsAllEntriesOf(described());
        }
    }

    /** Such as member_id, which leads to member. */
    private static boolean leadsWhereItSays(DescribedTable.Column column) {
        return column.name().endsWith("_id")
                && column.leadsTo().endsWith(column.name().replaceAll("_id$", ""));
    }

    private record Of(DescribedTable table, DescribedTable.Column column) {
        String words() {
            return table.name() + "." + column.name();
        }
    }

    private static Stream<Of> columns() {
        return DescribedTable.all().stream()
                .flatMap(table -> table.columns().stream().map(column -> new Of(table, column)));
    }

    private static Map<String, String> described() {
        Map<String, String> words = new HashMap<>();
        DescribedTable.all().forEach(table -> words.put(table.name(), table.about()));
        columns().forEach(each -> words.put(each.words(), each.column().about()));
        return words;
    }

    private static Map<String, String> kept(TestDatabase place) {
        Map<String, String> words = new HashMap<>();
        place.database().sql().connection(connection -> {
            DatabaseMetaData data = connection.getMetaData();
            read(data.getTables(null, connection.getSchema(), "%", null), List.of("TABLE_NAME"), words);
            read(data.getColumns(null, connection.getSchema(), "%", "%"), List.of("TABLE_NAME", "COLUMN_NAME"), words);
        });
        return words;
    }

    private static void read(ResultSet rows, List<String> named, Map<String, String> words) throws SQLException {
        try (rows) {
            while (rows.next()) {
                StringBuilder name = new StringBuilder();
                for (String part : named) {
                    name.append(name.isEmpty() ? "" : ".").append(rows.getString(part));
                }
                String remarks = rows.getString("REMARKS");
                words.put(name.toString(), remarks == null ? "" : remarks);
            }
        }
    }
}
