package warmshelf.plan;

import static warmshelf.db.generated.Tables.FREED_SPACE;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SEASON_PLAN;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.jooq.impl.DSL;
import warmshelf.allocation.Slot;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps the room that stays left on mats before their time: what is offered, and what an undone plan holds back. */
final class FreedSpaceStore {
    private final DSLContext sql;
    private final Audit audit;

    FreedSpaceStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** How much room is held back since a plan was undone. */
    public record HeldBack(UUID planId, int rooms) {}

    /**
     * Room on a mat that became free.
     *
     * @param to the day after the last that the stay would have lasted
     */
    record Freed(UUID matId, UUID placeId, int placeNumber, Slot slot, LocalDate from, LocalDate to) {}

    /** What is on offer and reaches beyond a day, the newest first. Somebody else may lie there by now. */
    List<Freed> reachingBeyond(LocalDate day) {
        return sql.select(
                        PLACE.MAT_ID,
                        PLACE.ID,
                        PLACE.NUMBER,
                        FREED_SPACE.FIRST_QUARTER,
                        FREED_SPACE.QUARTERS,
                        FREED_SPACE.FROM_DAY,
                        FREED_SPACE.TO_DAY)
                .from(FREED_SPACE)
                .join(PLACE)
                .on(PLACE.ID.eq(FREED_SPACE.PLACE_ID))
                .where(FREED_SPACE.TO_DAY.gt(day), FREED_SPACE.HELD_FOR_PLAN.isNull())
                .orderBy(FREED_SPACE.FREED_AT.desc(), FREED_SPACE.ID)
                .fetch(row -> new Freed(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        new Slot(row.value4(), row.value5()),
                        row.value6(),
                        row.value7()));
    }

    /** What reaches beyond a day and is held back, by plan, the one undone last first. */
    List<HeldBack> heldBeyond(LocalDate day) {
        return sql.select(SEASON_PLAN.ID, DSL.count())
                .from(FREED_SPACE)
                .join(SEASON_PLAN)
                .on(SEASON_PLAN.ID.eq(FREED_SPACE.HELD_FOR_PLAN))
                .where(FREED_SPACE.TO_DAY.gt(day))
                .groupBy(SEASON_PLAN.ID, SEASON_PLAN.UNDONE_AT)
                .orderBy(SEASON_PLAN.UNDONE_AT.desc())
                .fetch(Records.mapping(HeldBack::new));
    }

    /** Offers what an undone plan holds back to whoever waits. */
    void offer(UUID plan, UUID by) {
        sql.transaction(inside -> {
            int rooms = inside.dsl()
                    .update(FREED_SPACE)
                    .setNull(FREED_SPACE.HELD_FOR_PLAN)
                    .where(FREED_SPACE.HELD_FOR_PLAN.eq(plan))
                    .execute();
            if (rooms > 0) {
                audit.write(inside.dsl(), by, "offer freed room", "plan", plan, rooms + " rooms");
            }
        });
    }

    /** Offers whatever room is held back: a new plan was published, and has taken what it needs. */
    void offerAll(DSLContext tx) {
        tx.update(FREED_SPACE)
                .setNull(FREED_SPACE.HELD_FOR_PLAN)
                .where(FREED_SPACE.HELD_FOR_PLAN.isNotNull())
                .execute();
    }
}
