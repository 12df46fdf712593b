package warmshelf.allocation;

import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Declined;

/** The rows by which the database judges: one for each quarter and day that is taken, tied to the set-point of its mat on that day. */
public final class QuarterDayStore {
    private QuarterDayStore() {}

    /** Keeps what is taken, after the mat's set-points that it is tied to. */
    static void insert(DSLContext tx, UUID stay, PlaceAndDays spot, @Nullable WarmthNeed warmth) {
        if (warmth != null) {
            fixSetPoints(tx, warmth);
        }
        var insert = tx.insertInto(
                QUARTER_DAY,
                QUARTER_DAY.PLACE_ID,
                QUARTER_DAY.QUARTER,
                QUARTER_DAY.ON_DAY,
                QUARTER_DAY.STAY_ID,
                QUARTER_DAY.KIND,
                QUARTER_DAY.MAT_ID,
                QUARTER_DAY.CELSIUS,
                QUARTER_DAY.LOW_C,
                QUARTER_DAY.HIGH_C);
        for (LocalDate day = spot.from(); day.isBefore(spot.to()); day = day.plusDays(1)) {
            for (int quarter = spot.slot().firstQuarter();
                    quarter < spot.slot().firstQuarter() + spot.slot().quarters();
                    quarter++) {
                insert = warmth == null
                        ? insert.values(spot.placeId(), quarter, day, stay, "lit", null, null, null, null)
                        : insert.values(
                                spot.placeId(),
                                quarter,
                                day,
                                stay,
                                "mat",
                                warmth.matId(),
                                warmth.days().on(day),
                                warmth.band().lowC(),
                                warmth.band().highC());
            }
        }
        insert.execute();
    }

    /** Days that are set to that already stay as they are, also whose wish it was. */
    private static void fixSetPoints(DSLContext tx, WarmthNeed warmth) {
        WarmDays days = warmth.days();
        Map<LocalDate, Double> now = tx.select(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .where(MAT_DAY.MAT_ID.eq(warmth.matId()), MAT_DAY.ON_DAY.ge(days.from()), MAT_DAY.ON_DAY.lt(days.to()))
                .fetchMap(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS);
        days.from()
                .datesUntil(days.to())
                .filter(day -> !Objects.equals(now.get(day), days.on(day)))
                .forEach(day -> putSetPoint(tx, warmth.matId(), day, days.on(day), false));
    }

    /** Sets a mat on a day; what lies there follows, and the database refuses what it cannot bear. */
    static void putSetPoint(DSLContext tx, UUID mat, LocalDate day, double celsius, boolean byHand) {
        int changed = tx.update(MAT_DAY)
                .set(MAT_DAY.CELSIUS, celsius)
                .set(MAT_DAY.BY_HAND, byHand)
                .where(MAT_DAY.MAT_ID.eq(mat), MAT_DAY.ON_DAY.eq(day))
                .execute();
        if (changed == 0) {
            tx.insertInto(MAT_DAY)
                    .set(MAT_DAY.MAT_ID, mat)
                    .set(MAT_DAY.ON_DAY, day)
                    .set(MAT_DAY.CELSIUS, celsius)
                    .set(MAT_DAY.BY_HAND, byHand)
                    .execute();
        }
    }

    /** How warm a stay lies on its days, and what it bears. */
    public static WarmthNeed warmthOf(DSLContext tx, Stay stay) {
        var days = tx.select(QUARTER_DAY.MAT_ID, QUARTER_DAY.CELSIUS, QUARTER_DAY.LOW_C, QUARTER_DAY.HIGH_C)
                .from(QUARTER_DAY)
                .where(
                        QUARTER_DAY.STAY_ID.eq(stay.id()),
                        QUARTER_DAY.QUARTER.eq(stay.slot().firstQuarter()))
                .orderBy(QUARTER_DAY.ON_DAY)
                .fetch();
        var last = days.get(days.size() - 1);
        return new WarmthNeed(
                last.value1(),
                new WarmDays(stay.from(), days.getValues(QUARTER_DAY.CELSIUS)),
                new Band(last.value3(), last.value4()));
    }

    /** Turns the database's refusal, which only a race can still cause, into a no. */
    static <T> T judged(Supplier<T> write) {
        try {
            return write.get();
        } catch (DataAccessException refused) {
            if (refused.sqlState().startsWith("23")) {
                throw Declined.overtaken(new SpaceRefusal.TakenMeanwhile());
            }
            throw refused;
        }
    }
}
