package warmshelf.reminder;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Database;

/** Reads on which days a member looks. */
final class DutyDaysStore {
    private final DSLContext sql;

    DutyDaysStore(Database database) {
        this.sql = database.sql();
    }

    /** From a day on, in order. */
    List<FeedDay> of(UUID member, LocalDate from) {
        return sql.select(SITE.ID, SITE.NAME, DUTY.ON_DAY)
                .from(DUTY)
                .join(SITE)
                .on(SITE.ID.eq(DUTY.SITE_ID))
                .where(DUTY.MEMBER_ID.eq(member), DUTY.ON_DAY.ge(from))
                .orderBy(DUTY.ON_DAY, SITE.WALK_ORDER, SITE.NAME)
                .fetch(row -> FeedDay.duty(row.value1(), row.value2(), row.value3(), member));
    }
}
