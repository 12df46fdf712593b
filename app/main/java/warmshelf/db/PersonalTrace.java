package warmshelf.db;

import java.util.Objects;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableField;
import org.jooq.impl.DSL;

/**
 * A column that names a person, and what becomes of a row that does when that person is erased.
 *
 * @param only of which rows that holds; of others the row stays, without a name
 */
public record PersonalTrace(TableField<?, UUID> column, Becomes becomes, Topic topic, Condition only) {

    /** What becomes of a row. */
    public enum Becomes {
        /** It is deleted. */
        GOES,
        /** It stays, and the column is emptied. */
        EMPTIED,
        /** It stays, and names a person of whom nothing is known any more. */
        NAMELESS
    }

    /** What a row is about, as it is counted for people. */
    public enum Topic {
        SIGN_INS,
        MESSAGES,
        DEVICES,
        CALENDARS,
        WISHES,
        GARDEN,
        PROMISES,
        SEED,
        SOWINGS,
        ENTRIES,
        PHOTOS,
        CHANGES,
        OTHER_WORK
    }

    static PersonalTrace goes(TableField<?, UUID> column, Topic topic) {
        return new PersonalTrace(column, Becomes.GOES, topic, DSL.noCondition());
    }

    static PersonalTrace goesWhere(TableField<?, UUID> column, Topic topic, Condition only) {
        return new PersonalTrace(column, Becomes.GOES, topic, only);
    }

    static PersonalTrace emptied(TableField<?, UUID> column, Topic topic) {
        return new PersonalTrace(column, Becomes.EMPTIED, topic, DSL.noCondition());
    }

    static PersonalTrace nameless(TableField<?, UUID> column, Topic topic) {
        return new PersonalTrace(column, Becomes.NAMELESS, topic, DSL.noCondition());
    }

    public Table<?> table() {
        return Objects.requireNonNull(column.getTable());
    }

    /** The rows that this is about. */
    public Condition rowsOf(UUID person) {
        return ((Field<UUID>) column).eq(person).and(only);
    }
}
