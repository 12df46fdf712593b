package warmshelf.privacy;

import static warmshelf.db.generated.Tables.PHOTO;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jooq.TableField;
import warmshelf.db.Database;
import warmshelf.db.PersonalTrace.Becomes;
import warmshelf.db.PersonalTrace.Topic;
import warmshelf.db.PersonalTraces;
import warmshelf.leaving.LeavingStore;

/** Counts, by the same list of columns by which somebody is erased, what would go and what would stay. */
final class ErasureCountStore {
    private final DSLContext sql;
    private final LeavingStore leavings;

    ErasureCountStore(Database database, LeavingStore leavings) {
        this.sql = database.sql();
        this.leavings = leavings;
    }

    ErasureFigures of(UUID person, LocalDate today) {
        return new ErasureFigures(
                leavings.left(person, today),
                counted(person, Becomes.GOES),
                counted(person, Becomes.NAMELESS),
                notes(person));
    }

    /** A row that two columns bind to the person counts once. */
    private Map<Topic, Integer> counted(UUID person, Becomes what) {
        Map<Topic, Map<Table<?>, Condition>> rows = new EnumMap<>(Topic.class);
        PersonalTraces.all().stream()
                .filter(trace -> trace.becomes() == what)
                .forEach(trace -> rows.computeIfAbsent(trace.topic(), first -> new HashMap<>())
                        .merge(trace.table(), trace.rowsOf(person), Condition::or));
        Map<Topic, Integer> counts = new EnumMap<>(Topic.class);
        rows.forEach((topic, tables) -> counts.put(
                topic,
                tables.entrySet().stream()
                        .mapToInt(each -> count(each.getKey(), each.getValue()))
                        .sum()));
        return counts;
    }

    private int count(Table<?> table, Condition which) {
        return table.equals(PHOTO)
                ? sql.fetchCount(table, which, PHOTO.REMOVED_AT.isNull())
                : sql.fetchCount(table, which);
    }

    private int notes(UUID person) {
        Map<TableField<?, String>, Condition> texts = new HashMap<>();
        PersonalTraces.notes().stream()
                .filter(PersonalTraces.Note::readByPeople)
                .forEach(note -> texts.merge(note.text(), note.rowsOf(person), Condition::or));
        return texts.entrySet().stream()
                .mapToInt(each -> sql.fetchCount(each.getKey().getTable(), each.getValue()))
                .sum();
    }
}
