package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;

/** Keeps who looks where on which day. */
public final class DutyStore {
    private final DSLContext sql;
    private final Audit audit;
    private final StandInStore standIns;

    public DutyStore(Database database, Audit audit, StandInStore standIns) {
        this.sql = database.sql();
        this.audit = audit;
        this.standIns = standIns;
    }

    List<Named> sites() {
        return sites(DSL.noCondition());
    }

    /** Those that are in use on a day: nobody looks at what is retired. */
    List<Named> sitesInUse(LocalDate day) {
        return sites(SITE.RETIRED_FROM.isNull().or(SITE.RETIRED_FROM.gt(day)));
    }

    private List<Named> sites(Condition which) {
        return sql.select(SITE.ID, SITE.NAME)
                .from(SITE)
                .where(which)
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(Records.mapping(Named::new));
    }

    /** Everyone who has not left, by name. */
    List<Named> members() {
        return sql.select(MEMBER.ID, MEMBER.CALLED)
                .from(MEMBER)
                .where(MEMBER.LEFT_AT.isNull())
                .orderBy(MEMBER.NAME_KEY)
                .fetch(Records.mapping(Named::new));
    }

    /** Who is on duty, also somebody who has left since. */
    record Holder(UUID id, String name, boolean left) {}

    /** Who is on duty, from one day up to but not on another. */
    Map<Turn, Holder> rota(LocalDate from, LocalDate to) {
        Map<Turn, Holder> rota = new HashMap<>();
        sql.select(DUTY.SITE_ID, DUTY.ON_DAY, MEMBER.ID, MEMBER.CALLED, MEMBER.LEFT_AT)
                .from(DUTY)
                .join(MEMBER)
                .on(MEMBER.ID.eq(DUTY.MEMBER_ID))
                .where(DUTY.ON_DAY.ge(from), DUTY.ON_DAY.lt(to))
                .forEach(row -> rota.put(
                        new Turn(row.value1(), row.value2()),
                        new Holder(row.value3(), row.value4(), row.value5() != null)));
        return rota;
    }

    /**
     * One turn as it is to be.
     *
     * @param before who had it when the change was thought of; null: nobody
     * @param member who is to have it; null: nobody
     */
    public record Change(
            Turn turn, @Nullable UUID before, @Nullable UUID member) {}

    /**
     * Writes the turns that change; none at all when somebody else has changed one of them meanwhile.
     *
     * @return how many were written
     */
    public Decision<Integer> write(List<Change> changes, LocalDate today, UUID by) {
        return write(sql, changes, today, by);
    }

    /** The same within the caller's transaction. */
    public Decision<Integer> write(DSLContext within, List<Change> changes, LocalDate today, UUID by) {
        return within.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            List<Change> real = changes.stream()
                    .filter(change -> !Objects.equals(change.before(), change.member()))
                    .toList();
            List<Turn> overtaken = real.stream()
                    .filter(change -> !Objects.equals(change.before(), holder(tx, change.turn())))
                    .map(Change::turn)
                    .toList();
            if (!overtaken.isEmpty()) {
                return new Decision.Overtaken<>(new RotaOvertaken(overtaken));
            }
            real.forEach(change -> write(tx, change, by));
            if (!real.isEmpty()) {
                standIns.settle(tx, today, by);
            }
            return new Decision.Done<>(real.size());
        });
    }

    /**
     * What became of proposed turns.
     *
     * @param lines how many turns were written
     * @param left turns that stay as they are, because somebody has them by now, or who was to have them cannot any more
     */
    record Filled(int lines, List<Turn> left) {}

    /** Fills turns that are empty still with members who can take them still. */
    Filled fill(Map<Turn, UUID> proposed, LocalDate today, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            StandInStore.holdRota(tx);
            List<Turn> left = new ArrayList<>();
            proposed.forEach((turn, member) -> {
                RotaBook book = RotaBookStore.read(tx, today);
                boolean can = book.volunteers().stream()
                        .anyMatch(each -> each.id().equals(member) && book.canTake(each, turn));
                if (can && !book.isFilled(turn)) {
                    write(tx, new Change(turn, null, member), by);
                } else {
                    left.add(turn);
                }
            });
            standIns.settle(tx, today, by);
            return new Filled(proposed.size() - left.size(), left);
        });
    }

    static @Nullable UUID holder(DSLContext tx, Turn turn) {
        return tx.select(DUTY.MEMBER_ID)
                .from(DUTY)
                .where(DUTY.SITE_ID.eq(turn.site()), DUTY.ON_DAY.eq(turn.day()))
                .fetchOne(DUTY.MEMBER_ID);
    }

    private void write(DSLContext tx, Change change, UUID by) {
        Turn turn = change.turn();
        tx.deleteFrom(DUTY)
                .where(DUTY.SITE_ID.eq(turn.site()), DUTY.ON_DAY.eq(turn.day()))
                .execute();
        if (change.member() != null) {
            tx.insertInto(DUTY)
                    .set(DUTY.SITE_ID, turn.site())
                    .set(DUTY.ON_DAY, turn.day())
                    .set(DUTY.MEMBER_ID, change.member())
                    .set(DUTY.MADE_BY, by)
                    .set(DUTY.MADE_AT, audit.now())
                    .execute();
        }
        SwapStore.overtake(tx, turn, audit.now());
        audit.write(tx, by, "set duty", "site", turn.site(), turn.day() + " " + change.member());
    }
}
