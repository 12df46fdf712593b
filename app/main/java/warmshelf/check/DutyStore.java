package warmshelf.check;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps who looks where on which day. */
public final class DutyStore {
    private final DSLContext sql;
    private final Audit audit;

    public DutyStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A name to choose or show. */
    record Named(UUID id, String name) {}

    List<Named> sites() {
        return sql.select(SITE.ID, SITE.NAME)
                .from(SITE)
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(Records.mapping(Named::new));
    }

    List<Named> members() {
        return sql.select(MEMBER.ID, MEMBER.NAME)
                .from(MEMBER)
                .where(MEMBER.LEFT_AT.isNull())
                .orderBy(MEMBER.NAME_KEY)
                .fetch(Records.mapping(Named::new));
    }

    /** Who is on duty, by site and day, from one day up to but not on another. */
    Map<UUID, Map<LocalDate, Named>> rota(LocalDate from, LocalDate to) {
        return sql
                .select(DUTY.SITE_ID, DUTY.ON_DAY, MEMBER.ID, MEMBER.NAME)
                .from(DUTY)
                .join(MEMBER)
                .on(MEMBER.ID.eq(DUTY.MEMBER_ID))
                .where(DUTY.ON_DAY.ge(from), DUTY.ON_DAY.lt(to))
                .fetch()
                .stream()
                .collect(Collectors.groupingBy(
                        row -> row.value1(),
                        Collectors.toMap(row -> row.value2(), row -> new Named(row.value3(), row.value4()))));
    }

    /** One line of the rota as it is to be. */
    public record Change(UUID site, LocalDate day, @Nullable UUID member) {}

    /** Writes the lines that differ from what is there. */
    public int write(List<Change> changes, UUID by) {
        return sql.transactionResult(inside -> {
            int written = 0;
            for (Change change : changes) {
                written += write(inside.dsl(), change, by);
            }
            return written;
        });
    }

    private int write(DSLContext tx, Change change, UUID by) {
        UUID before = tx.select(DUTY.MEMBER_ID)
                .from(DUTY)
                .where(DUTY.SITE_ID.eq(change.site()), DUTY.ON_DAY.eq(change.day()))
                .fetchOne(DUTY.MEMBER_ID);
        if (java.util.Objects.equals(before, change.member())) {
            return 0;
        }
        tx.deleteFrom(DUTY)
                .where(DUTY.SITE_ID.eq(change.site()), DUTY.ON_DAY.eq(change.day()))
                .execute();
        if (change.member() != null) {
            tx.insertInto(DUTY)
                    .set(DUTY.SITE_ID, change.site())
                    .set(DUTY.ON_DAY, change.day())
                    .set(DUTY.MEMBER_ID, change.member())
                    .set(DUTY.MADE_BY, by)
                    .set(DUTY.MADE_AT, audit.now())
                    .execute();
        }
        audit.write(tx, by, "set duty", "site", change.site(), change.day() + " " + change.member());
        return 1;
    }
}
