package warmshelf.group;

import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SITE_COORDINATOR;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.words.Choice;
import warmshelf.words.Counted;

/** Keeps who coordinates which sites without coordinating the whole group. */
public final class SiteCoordinatorStore {
    private final Database database;
    private final Audit audit;
    private final MemberStore members;

    public SiteCoordinatorStore(Database database, Audit audit, MemberStore members) {
        this.database = database;
        this.audit = audit;
        this.members = members;
    }

    /** The sites to choose from, in walking order. */
    List<Choice> sites() {
        return database.sql()
                .select(SITE.ID, SITE.NAME)
                .from(SITE)
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(row -> new Choice(row.value1().toString(), row.value2()));
    }

    /** The sites of one person. */
    Set<UUID> of(UUID member) {
        return Set.copyOf(database.sql()
                .select(SITE_COORDINATOR.SITE_ID)
                .from(SITE_COORDINATOR)
                .where(SITE_COORDINATOR.MEMBER_ID.eq(member))
                .fetch(SITE_COORDINATOR.SITE_ID));
    }

    /** The names of the sites of each person who has any, in walking order. */
    Map<UUID, List<String>> names() {
        return database.sql()
                .select(SITE_COORDINATOR.MEMBER_ID, SITE.NAME)
                .from(SITE_COORDINATOR)
                .join(SITE)
                .on(SITE.ID.eq(SITE_COORDINATOR.SITE_ID))
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetchGroups(SITE_COORDINATOR.MEMBER_ID, SITE.NAME);
    }

    /**
     * Makes somebody present the coordinator of those sites alone, or of none; a no when nobody would be left to coordinate the whole
     * group.
     *
     * @param sites some that there are
     */
    Decision<UUID> set(UUID member, Set<UUID> sites, UUID by) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            members.makePlain(tx, member, by);
            List<String> names = tx.select(SITE.NAME)
                    .from(SITE)
                    .where(SITE.ID.in(sites))
                    .orderBy(SITE.WALK_ORDER, SITE.NAME)
                    .forUpdate()
                    .fetch(SITE.NAME);
            if (names.size() != sites.size()) {
                throw Declined.overtaken(new GroupRefusal.SiteGone());
            }
            sites.forEach(site -> tx.insertInto(SITE_COORDINATOR)
                    .set(SITE_COORDINATOR.MEMBER_ID, member)
                    .set(SITE_COORDINATOR.SITE_ID, site)
                    .set(SITE_COORDINATOR.MADE_BY, by)
                    .set(SITE_COORDINATOR.MADE_AT, audit.now())
                    .execute());
            audit.write(tx, by, "make site coordinator", "member", member, Counted.all(names));
            return member;
        }));
    }

    /** Ends being a coordinator of sites, within the caller's transaction. */
    static void end(DSLContext sql, UUID member) {
        sql.deleteFrom(SITE_COORDINATOR)
                .where(SITE_COORDINATOR.MEMBER_ID.eq(member))
                .execute();
    }
}
