package warmshelf.group;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;

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
        Map<UUID, String> written = sql.select(MEMBER.ID, MEMBER.CALLED)
                .from(MEMBER)
                .where(MEMBER.ROLE.ne("tablet"))
                .fetchMap(MEMBER.ID, MEMBER.CALLED);
        List<CalledNames.Named> everyone = sql.select(MEMBER.ID, MEMBER.NAME, MEMBER.LEFT_AT, MEMBER.ERASED_AT)
                .from(MEMBER)
                .where(MEMBER.ROLE.ne("tablet"))
                .fetch(row ->
                        new CalledNames.Named(row.value1(), row.value2(), row.value3() == null, row.value4() != null));
        CalledNames.of(everyone).forEach((id, called) -> {
            if (!called.equals(written.get(id))) {
                sql.update(MEMBER)
                        .set(MEMBER.CALLED, called)
                        .where(MEMBER.ID.eq(id))
                        .execute();
            }
        });
    }
}
