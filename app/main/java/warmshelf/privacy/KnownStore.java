package warmshelf.privacy;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PHOTO;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.db.DescribedTable;
import warmshelf.db.PersonalRows;

/** Reads all that the group's tables hold of one person. */
final class KnownStore {
    private final DSLContext sql;

    KnownStore(Database database) {
        this.sql = database.sql();
    }

    /** The tables that hold something of a person: who they are first, the rest by name. */
    List<KnownTable> of(UUID person) {
        Map<String, DescribedTable> described = new HashMap<>();
        DescribedTable.all().forEach(table -> described.put(table.name(), table));
        List<KnownTable> known = new ArrayList<>();
        for (Table<?> table : PersonalRows.tables()) {
            KnownTable read = read(table, person, described);
            if (!read.rows().isEmpty()) {
                known.add(read);
            }
        }
        known.sort(Comparator.comparing(table -> !table.name().equals(MEMBER.getName())));
        return known;
    }

    private KnownTable read(Table<?> table, UUID person, Map<String, DescribedTable> described) {
        List<Field<?>> told =
                Arrays.stream(table.fields()).filter(PersonalRows::isTold).toList();
        Map<String, DescribedTable.Column> columns =
                Objects.requireNonNull(described.get(table.getName())).columns().stream()
                        .collect(Collectors.toMap(DescribedTable.Column::name, column -> column));
        // pictures are files of their own
        List<Field<?>> asked =
                told.stream().filter(field -> !field.equals(PHOTO.JPEG)).toList();
        List<List<@Nullable Object>> rows = sql.select(asked)
                .from(table)
                .where(PersonalRows.of(table, person).orElseThrow())
                .orderBy(table.getPrimaryKey().getFields())
                .fetch(row -> values(row, asked, person));
        return new KnownTable(
                table.getName(),
                table.getComment(),
                asked.stream().map(field -> columns.get(field.getName())).toList(),
                rows);
    }

    private static List<@Nullable Object> values(Record row, List<Field<?>> fields, UUID person) {
        List<@Nullable Object> values = new ArrayList<>();
        for (Field<?> field : fields) {
            Object value = row.get(field);
            boolean names = value != null && PersonalRows.namesAPerson(field);
            values.add(names ? who(value, person) : value);
        }
        return values;
    }

    private static KnownTable.Who who(Object value, UUID person) {
        return value.equals(person) ? KnownTable.Who.YOU : KnownTable.Who.SOMEBODY_ELSE;
    }

    /** The photos that a person took and nobody took out. */
    List<UUID> photos(UUID person) {
        return sql.select(PHOTO.ID)
                .from(PHOTO)
                .where(PHOTO.ADDED_BY.eq(person), PHOTO.REMOVED_AT.isNull())
                .orderBy(PHOTO.ADDED_AT, PHOTO.ID)
                .fetch(PHOTO.ID);
    }

    byte[] jpeg(UUID photo) {
        return sql.select(PHOTO.JPEG).from(PHOTO).where(PHOTO.ID.eq(photo)).fetchSingle(PHOTO.JPEG);
    }
}
