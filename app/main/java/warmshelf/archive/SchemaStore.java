package warmshelf.archive;

import java.math.BigDecimal;
import java.sql.Date;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jooq.Field;
import org.jooq.ForeignKey;
import org.jooq.Table;
import org.jooq.TableField;
import org.jooq.UniqueKey;
import warmshelf.db.Database;
import warmshelf.db.Migrations;
import warmshelf.db.TableOwnership;
import warmshelf.db.generated.DefaultSchema;

/** The tables, in which order and form they are written and read. */
final class SchemaStore {
    private static final String HISTORY = "flyway_schema_history";
    /** By the class in which a column's values come from the driver; a day has two, as a database is asked for its tables or not. */
    private static final Map<Class<?>, ColumnKind> KINDS = Map.ofEntries(
            Map.entry(UUID.class, ColumnKind.KEY),
            Map.entry(String.class, ColumnKind.TEXT),
            Map.entry(Integer.class, ColumnKind.WHOLE_NUMBER),
            Map.entry(Long.class, ColumnKind.WHOLE_NUMBER),
            Map.entry(BigDecimal.class, ColumnKind.DECIMAL),
            Map.entry(Double.class, ColumnKind.REAL),
            Map.entry(Boolean.class, ColumnKind.YES_NO),
            Map.entry(LocalDate.class, ColumnKind.DAY),
            Map.entry(Date.class, ColumnKind.DAY),
            Map.entry(OffsetDateTime.class, ColumnKind.MOMENT),
            Map.entry(byte[].class, ColumnKind.PICTURE));

    private SchemaStore() {}

    /** The tables as this program has them. */
    static ArchiveSchema newest() {
        List<String> versions = Migrations.versions();
        return new ArchiveSchema(versions.get(versions.size() - 1), shaped(DefaultSchema.DEFAULT_SCHEMA.getTables()));
    }

    /** The tables as an earlier program had them: they are made in a database of their own and looked at. */
    static ArchiveSchema at(String version) {
        try (Database scratch = Database.inMemory("schema-" + UUID.randomUUID(), version)) {
            List<Table<?>> tables = scratch.sql().meta().getTables().stream()
                    .filter(table ->
                            Objects.requireNonNull(table.getSchema()).getName().equals("public"))
                    .filter(table -> !table.getName().equals(HISTORY))
                    .toList();
            return new ArchiveSchema(version, shaped(tables));
        }
    }

    private static List<ArchiveTable> shaped(Collection<? extends Table<?>> tables) {
        Map<String, Table<?>> byName = new TreeMap<>();
        tables.forEach(table -> byName.put(table.getName(), table));
        Set<String> ordered = new LinkedHashSet<>();
        // by name among those that do not depend on each other, so that every database gives the same order
        byName.values().forEach(table -> parentsFirst(table, byName, ordered, new HashSet<>()));
        return ordered.stream()
                .map(name -> shaped(Objects.requireNonNull(byName.get(name))))
                .toList();
    }

    private static void parentsFirst(
            Table<?> table, Map<String, Table<?>> byName, Set<String> ordered, Set<String> under) {
        if (ordered.contains(table.getName()) || !under.add(table.getName())) {
            return;
        }
        table.getReferences().stream()
                .map(SchemaStore::parent)
                .sorted()
                .map(byName::get)
                .filter(Objects::nonNull)
                .forEach(parent -> parentsFirst(parent, byName, ordered, under));
        ordered.add(table.getName());
    }

    private static String parent(ForeignKey<?, ?> reference) {
        return reference.getInverseKey().getTable().getName();
    }

    private static ArchiveTable shaped(Table<?> table) {
        Set<String> ofOwnTable = new HashSet<>();
        for (ForeignKey<?, ?> reference : table.getReferences()) {
            if (parent(reference).equals(table.getName())) {
                reference.getFields().forEach(field -> ofOwnTable.add(field.getName()));
            }
        }
        List<ArchiveColumn> columns = Arrays.stream(table.fields())
                .map(field -> shaped(table, field, ofOwnTable))
                .toList();
        UniqueKey<?> key = Objects.requireNonNull(table.getPrimaryKey(), table.getName());
        return new ArchiveTable(
                table.getName(),
                TableOwnership.isTheGroups(table.getName()),
                columns,
                key.getFields().stream().map(TableField::getName).toList());
    }

    private static ArchiveColumn shaped(Table<?> table, Field<?> field, Set<String> ofOwnTable) {
        // set-points are doubles in the program, but decimals in the database
        Class<?> kept = field.getConverter().fromType();
        ColumnKind kind = KINDS.get(kept);
        if (kind == null) {
            throw new IllegalStateException(
                    "%s.%s: no way to write a %s".formatted(table.getName(), field.getName(), kept.getSimpleName()));
        }
        return new ArchiveColumn(
                field.getName(),
                kind,
                field.getDataType().nullable(),
                TableOwnership.isSecret(table.getName(), field.getName()),
                field.getDataType().identity(),
                ofOwnTable.contains(field.getName()));
    }
}
