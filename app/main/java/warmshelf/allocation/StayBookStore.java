package warmshelf.allocation;

import static warmshelf.allocation.AllocationSentences.SAY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import warmshelf.db.Database;
import warmshelf.shelf.OnSiteStore;

/** Reads stays, with where they lie in words. */
public final class StayBookStore {
    private StayBookStore() {}

    /** The stays of some sowings, in order of time; cancelled ones, which last no day, are left out. */
    public static Map<UUID, List<Stay>> ofSowings(DSLContext sql, Collection<UUID> sowings) {
        return stays(sql, Database.listed(STAY, STAY.SOWING_ID, sowings), DSL.noCondition()).stream()
                .collect(java.util.stream.Collectors.groupingBy(Stay::sowingId));
    }

    /** The stays of one sowing, in order of time. */
    public static List<Stay> ofSowing(DSLContext sql, UUID sowing) {
        return stays(sql, STAY, STAY.SOWING_ID.eq(sowing));
    }

    /** Every stay that lasts beyond the morning of a day, in order of time. */
    public static List<Stay> lastingAfter(DSLContext sql, LocalDate day) {
        return stays(sql, STAY, STAY.TO_DAY.gt(day));
    }

    /** The stay of that id. */
    public static Optional<Stay> find(DSLContext sql, UUID stay) {
        return stays(sql, STAY, STAY.ID.eq(stay)).stream().findFirst();
    }

    private static List<Stay> stays(DSLContext sql, Table<?> among, Condition which) {
        return OnSiteStore.ofPlaces(sql.select(
                                STAY.ID,
                                STAY.SOWING_ID,
                                STAY.PLACE_ID,
                                STAY.FIRST_QUARTER,
                                STAY.QUARTERS,
                                STAY.FROM_DAY,
                                STAY.TO_DAY,
                                STAY.VERSION,
                                PLACE.KIND,
                                PLACE.NUMBER,
                                MAT.NAME,
                                SHELF.FROM_TOP,
                                RACK.NAME,
                                SITE.NAME)
                        .from(among)
                        .join(PLACE)
                        .on(PLACE.ID.eq(STAY.PLACE_ID)))
                .where(which, STAY.FROM_DAY.lt(STAY.TO_DAY))
                .orderBy(STAY.FROM_DAY, STAY.ID)
                .fetch(StayBookStore::stay);
    }

    private static Stay stay(Record found) {
        Slot slot = new Slot(found.get(STAY.FIRST_QUARTER), found.get(STAY.QUARTERS));
        String surface = found.get(MAT.NAME) == null ? SAY.light() : SAY.mat(found.get(MAT.NAME));
        String where = SAY.placeOf(
                SAY.shelf(found.get(SITE.NAME), found.get(RACK.NAME), found.get(SHELF.FROM_TOP)),
                surface,
                found.get(PLACE.NUMBER),
                slot.words());
        return new Stay(
                found.get(STAY.ID),
                found.get(STAY.SOWING_ID),
                found.get(STAY.PLACE_ID),
                found.get(PLACE.KIND),
                where,
                slot,
                found.get(STAY.FROM_DAY),
                found.get(STAY.TO_DAY),
                found.get(STAY.VERSION));
    }
}
