package warmshelf.allocation;

import static warmshelf.db.generated.Tables.FREED_SPACE;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** Keeps what room a stay leaves on a mat before its time. */
final class FreedRoomStore {
    private FreedRoomStore() {}

    /** What is left of an ended stay's days, so that whoever waits can be offered them. */
    static void keep(DSLContext tx, Stay stay, LocalDate from, @Nullable UUID heldFor, OffsetDateTime now) {
        tx.insertInto(FREED_SPACE)
                .set(FREED_SPACE.ID, UUID.randomUUID())
                .set(FREED_SPACE.STAY_ID, stay.id())
                .set(FREED_SPACE.PLACE_ID, stay.placeId())
                .set(FREED_SPACE.FIRST_QUARTER, stay.slot().firstQuarter())
                .set(FREED_SPACE.QUARTERS, stay.slot().quarters())
                .set(FREED_SPACE.FROM_DAY, from)
                .set(FREED_SPACE.TO_DAY, stay.to())
                .set(FREED_SPACE.FREED_AT, now)
                .set(FREED_SPACE.HELD_FOR_PLAN, heldFor)
                .execute();
    }

    /** Holds the room at a stay's place and on its days, whoever left it, back from who waits, because a plan was undone. */
    static void holdBack(DSLContext tx, Stay stay, UUID undonePlan) {
        tx.update(FREED_SPACE)
                .set(FREED_SPACE.HELD_FOR_PLAN, undonePlan)
                .where(
                        FREED_SPACE.PLACE_ID.eq(stay.placeId()),
                        FREED_SPACE.FIRST_QUARTER.lt(
                                stay.slot().firstQuarter() + stay.slot().quarters()),
                        FREED_SPACE
                                .FIRST_QUARTER
                                .plus(FREED_SPACE.QUARTERS)
                                .gt(stay.slot().firstQuarter()),
                        FREED_SPACE.FROM_DAY.lt(stay.to()),
                        FREED_SPACE.TO_DAY.gt(stay.from()),
                        FREED_SPACE.HELD_FOR_PLAN.isNull())
                .execute();
    }
}
