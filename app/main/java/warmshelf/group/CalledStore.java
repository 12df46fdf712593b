package warmshelf.group;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Keeps what each member is called before others, which changes when somebody comes, goes or is named anew. */
public final class CalledStore {
    private CalledStore() {}

    /**
     * Lets one change of the group's people wait for another, before either touches a member, so that two of one first name who
     * join at the same moment see each other.
     */
    public static void oneByOne(DSLContext sql) {
        sql.select(GROUP_PROFILE.ID).from(GROUP_PROFILE).forUpdate().fetch();
    }

    /** Works all of them out anew, within the caller's transaction, and writes those that changed. */
    public static void renew(DSLContext sql) {
        renew(sql, DSL.noCondition());
    }

    /** The same for those whose first names somebody has, had or lost: what others are called does not hang on them. */
    static void renew(DSLContext sql, String... names) {
        Condition sharing = DSL.noCondition();
        for (String name : names) {
            String first = CalledNames.firstKey(name);
            sharing = sharing.or(MEMBER.NAME_KEY.eq(first)).or(MEMBER.NAME_KEY.startsWith(first + " "));
        }
        renew(sql, sharing);
    }

    private static void renew(DSLContext sql, Condition which) {
        Map<UUID, String> written = new HashMap<>();
        List<CalledNames.Named> people = sql.select(
                        MEMBER.ID, MEMBER.NAME, MEMBER.LEFT_AT, MEMBER.ERASED_AT, MEMBER.CALLED)
                .from(MEMBER)
                .where(MEMBER.ROLE.ne("tablet"), which)
                .fetch(row -> {
                    written.put(row.value1(), row.value5());
                    return new CalledNames.Named(
                            row.value1(), row.value2(), row.value3() == null, row.value4() != null);
                });
        CalledNames.of(people).forEach((id, called) -> {
            if (!called.equals(written.get(id))) {
                sql.update(MEMBER)
                        .set(MEMBER.CALLED, called)
                        .where(MEMBER.ID.eq(id))
                        .execute();
            }
        });
    }
}
