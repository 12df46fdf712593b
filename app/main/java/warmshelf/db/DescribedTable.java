package warmshelf.db;

import static warmshelf.db.DbSentences.SAY;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Field;
import org.jooq.Table;
import warmshelf.db.generated.DefaultSchema;

/**
 * A table of the group's database, in the words that its migrations say of it. They are read from the classes that each build
 * generates from the migrations, so they cannot be older than the tables.
 *
 * @param about what a row of it is, and who writes it where that is not plain
 */
public record DescribedTable(String name, String about, List<Column> columns) {
    private static final Map<Class<?>, String> KINDS = Map.of(
            UUID.class, SAY.key(),
            String.class, SAY.text(),
            Integer.class, SAY.wholeNumber(),
            Long.class, SAY.wholeNumber(),
            BigDecimal.class, SAY.number(),
            Double.class, SAY.number(),
            Boolean.class, SAY.yesOrNo(),
            LocalDate.class, SAY.day(),
            OffsetDateTime.class, SAY.moment(),
            byte[].class, SAY.picture());

    /**
     * A column of the table.
     *
     * @param kind what it holds, in plain words, such as 'day'
     * @param about what it means, in which unit, and what it means when it is empty; empty where its name says all
     * @param leadsTo the table whose row it names; empty: none
     */
    public record Column(String name, String kind, boolean mayBeEmpty, String about, String leadsTo) {}

    /** Every table, by name. */
    public static List<DescribedTable> all() {
        return DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
                .map(DescribedTable::of)
                .sorted(Comparator.comparing(DescribedTable::name))
                .toList();
    }

    private static DescribedTable of(Table<?> table) {
        Map<String, String> leads = new HashMap<>();
        table.getReferences().stream()
                .filter(key -> key.getFields().size() == 1)
                .forEach(key -> leads.put(
                        key.getFields().get(0).getName(),
                        key.getInverseKey().getTable().getName()));
        List<Column> columns = Arrays.stream(table.fields())
                .map(field -> column(field, leads.getOrDefault(field.getName(), "")))
                .toList();
        return new DescribedTable(table.getName(), table.getComment(), columns);
    }

    private static Column column(Field<?> field, String leadsTo) {
        return new Column(
                field.getName(),
                KINDS.getOrDefault(field.getType(), field.getDataType().getTypeName()),
                field.getDataType().nullable(),
                field.getComment(),
                leadsTo);
    }
}
