package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY_STAND_IN;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps who stands in on which day. Whatever changes the rota or what people can settles it anew in its transaction. */
public final class StandInStore {
    private final DSLContext sql;
    private final Audit audit;

    public StandInStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** Lets one change of the rota at a time through, until the transaction ends. */
    static void holdRota(DSLContext tx) {
        tx.select(SITE.ID).from(SITE).orderBy(SITE.ID).forUpdate().fetch();
    }

    /** Who stands in, from one day up to but not on another. */
    Map<Turn, Named> between(LocalDate from, LocalDate to) {
        Map<Turn, Named> standIns = new HashMap<>();
        sql.select(DUTY_STAND_IN.SITE_ID, DUTY_STAND_IN.ON_DAY, MEMBER.ID, MEMBER.CALLED)
                .from(DUTY_STAND_IN)
                .join(MEMBER)
                .on(MEMBER.ID.eq(DUTY_STAND_IN.MEMBER_ID))
                .where(DUTY_STAND_IN.ON_DAY.ge(from), DUTY_STAND_IN.ON_DAY.lt(to), MEMBER.LEFT_AT.isNull())
                .forEach(row ->
                        standIns.put(new Turn(row.value1(), row.value2()), new Named(row.value3(), row.value4())));
        return standIns;
    }

    /** Names stand-ins for every day from today on that somebody looks; whoever is down and still can stays. */
    void settle(DSLContext tx, LocalDate today, UUID by) {
        Map<Turn, UUID> before = new HashMap<>();
        tx.selectFrom(DUTY_STAND_IN)
                .where(DUTY_STAND_IN.ON_DAY.ge(today))
                .forEach(row -> before.put(new Turn(row.getSiteId(), row.getOnDay()), row.getMemberId()));
        Set<Turn> turns = RotaBookStore.duties(tx, today).keySet();
        Map<Turn, UUID> after = StandIns.settle(List.copyOf(turns), before, RotaBookStore.read(tx, today));
        if (after.equals(before)) {
            return;
        }
        tx.deleteFrom(DUTY_STAND_IN).where(DUTY_STAND_IN.ON_DAY.ge(today)).execute();
        after.forEach((turn, member) -> tx.insertInto(DUTY_STAND_IN)
                .set(DUTY_STAND_IN.SITE_ID, turn.site())
                .set(DUTY_STAND_IN.ON_DAY, turn.day())
                .set(DUTY_STAND_IN.MEMBER_ID, member)
                .execute());
        audit.write(tx, by, "settle stand-ins", "rota", today, "%d days from %s".formatted(after.size(), today));
    }
}
