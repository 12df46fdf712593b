package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.DUTY_WILLING;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps on which weekdays members can look where, and on which days they cannot at all. */
public final class WillingStore {
    private final DSLContext sql;
    private final Audit audit;
    private final StandInStore standIns;

    public WillingStore(Database database, Audit audit, StandInStore standIns) {
        this.sql = database.sql();
        this.audit = audit;
        this.standIns = standIns;
    }

    /** The weekdays, by site, on which a member can look. */
    Set<SiteWeekday> of(UUID member) {
        return new HashSet<>(sql.select(DUTY_WILLING.SITE_ID, DUTY_WILLING.WEEKDAY)
                .from(DUTY_WILLING)
                .where(DUTY_WILLING.MEMBER_ID.eq(member))
                .fetch(row -> new SiteWeekday(row.value1(), java.time.DayOfWeek.of(row.value2()))));
    }

    /** A member can look at these sites on these weekdays and on no others. */
    public void keep(UUID member, Set<SiteWeekday> can, LocalDate today, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            tx.deleteFrom(DUTY_WILLING).where(DUTY_WILLING.MEMBER_ID.eq(member)).execute();
            can.forEach(each -> tx.insertInto(DUTY_WILLING)
                    .set(DUTY_WILLING.MEMBER_ID, member)
                    .set(DUTY_WILLING.SITE_ID, each.site())
                    .set(DUTY_WILLING.WEEKDAY, each.weekday().getValue())
                    .execute());
            audit.write(tx, by, "set willingness", "member", member, can.size() + " weekdays at sites");
            standIns.settle(tx, today, by);
        });
    }

    /** The days from today on that a member cannot look, in order. */
    List<Away> away(UUID member, LocalDate today) {
        return sql.selectFrom(DUTY_AWAY)
                .where(DUTY_AWAY.MEMBER_ID.eq(member), DUTY_AWAY.LAST_DAY.ge(today))
                .orderBy(DUTY_AWAY.FIRST_DAY, DUTY_AWAY.LAST_DAY, DUTY_AWAY.ID)
                .fetch(row -> new Away(row.getId(), row.getFirstDay(), row.getLastDay()));
    }

    /** A member cannot look from the first to the last day. */
    public void addAway(UUID member, LocalDate first, LocalDate last, LocalDate today, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            tx.insertInto(DUTY_AWAY)
                    .set(DUTY_AWAY.ID, UUID.randomUUID())
                    .set(DUTY_AWAY.MEMBER_ID, member)
                    .set(DUTY_AWAY.FIRST_DAY, first)
                    .set(DUTY_AWAY.LAST_DAY, last)
                    .set(DUTY_AWAY.MADE_BY, by)
                    .set(DUTY_AWAY.MADE_AT, audit.now())
                    .execute();
            audit.write(tx, by, "cannot look", "member", member, "%s to %s".formatted(first, last));
            standIns.settle(tx, today, by);
        });
    }

    /** Whose days away they are; empty: there are no such days. */
    Optional<UUID> ownerOfAway(UUID away) {
        return sql.select(DUTY_AWAY.MEMBER_ID)
                .from(DUTY_AWAY)
                .where(DUTY_AWAY.ID.eq(away))
                .fetchOptional(DUTY_AWAY.MEMBER_ID);
    }

    void removeAway(UUID away, UUID member, LocalDate today, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            tx.deleteFrom(DUTY_AWAY).where(DUTY_AWAY.ID.eq(away)).execute();
            audit.write(tx, by, "can look again", "member", member, away.toString());
            standIns.settle(tx, today, by);
        });
    }
}
