package warmshelf.plan;

import static warmshelf.db.generated.Tables.FREED_SPACE;
import static warmshelf.db.generated.Tables.PLACE;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.allocation.Slot;
import warmshelf.db.Database;

/** Reads the room that stays left on mats before their time. */
final class FreedStore {
    private final DSLContext sql;

    FreedStore(Database database) {
        this.sql = database.sql();
    }

    /**
     * Room on a mat that became free.
     *
     * @param to the day after the last that the stay would have lasted
     */
    record Freed(UUID matId, UUID placeId, int placeNumber, Slot slot, LocalDate from, LocalDate to) {}

    /** What reaches beyond a day, the newest first. Somebody else may lie there by now. */
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
                .where(FREED_SPACE.TO_DAY.gt(day))
                .orderBy(FREED_SPACE.FREED_AT.desc(), FREED_SPACE.ID)
                .fetch(row -> new Freed(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        new Slot(row.value4(), row.value5()),
                        row.value6(),
                        row.value7()));
    }
}
