package warmshelf.allocation;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectOnConditionStep;
import org.jooq.SelectSelectStep;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.CropCatalogue;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.Thermostat;
import warmshelf.shelf.WholeDegree;

/** Finds out, in the transaction that saves, what stands in the way of it. */
public final class ClashStore {

    private final SurroundingsStore surroundings;

    private record Held(String mat, Thermostat thermostat) {}

    public ClashStore(CropCatalogue crops) {
        this.surroundings = new SurroundingsStore(crops);
    }

    /** What others do on a place and its mat over some days; the stay that is about to be moved does not count. */
    Surroundings around(DSLContext tx, CandidatePlace place, @Nullable UUID except, LocalDate from, LocalDate to) {
        return surroundings.around(tx, except == null ? Set.of() : Set.of(except), List.of(place), from, to);
    }

    /** A place as the judge sees it. */
    CandidatePlace place(DSLContext tx, UUID id) {
        return tx.select(
                        PLACE.NUMBER,
                        PLACE.MAT_ID,
                        MAT.NAME,
                        MAT.THERMOSTAT_LOW_C,
                        MAT.THERMOSTAT_HIGH_C,
                        MAT.USUAL_C,
                        MAT.LIGHT)
                .from(PLACE)
                .leftJoin(MAT)
                .on(MAT.ID.eq(PLACE.MAT_ID))
                .where(PLACE.ID.eq(id))
                .fetchSingle(found -> new CandidatePlace(
                        id,
                        found.value1(),
                        "",
                        found.value2() == null
                                ? null
                                : new MatSpace(
                                        found.value2(),
                                        found.value3(),
                                        "",
                                        new Thermostat(found.value4(), found.value5()),
                                        found.value6(),
                                        LightAbove.named(found.value7()),
                                        tx.select(PLACE.ID)
                                                .from(PLACE)
                                                .where(PLACE.MAT_ID.eq(found.value2()))
                                                .orderBy(PLACE.NUMBER)
                                                .fetch(PLACE.ID))));
    }

    /**
     * Everything in the way of lying somewhere, as it stands in this transaction.
     *
     * @param needsLight whether it is not to lie on a mat without light
     */
    List<Obstacle> obstacles(
            DSLContext tx,
            UUID sowing,
            PlaceAndDays spot,
            @Nullable WarmDays warm,
            @Nullable Band band,
            boolean needsLight,
            @Nullable UUID except) {
        CandidatePlace place = place(tx, spot.placeId());
        Surroundings around = around(tx, place, except, spot.from(), spot.to());
        SpaceJudge judge = new SpaceJudge(around, lies(tx, around.holds(), sowing, spot.from(), except));
        MatSpace mat = place.mat();
        return mat == null || warm == null || band == null
                ? judge.underLight(place, spot)
                : judge.onMat(place, mat, spot, warm, band, needsLight);
    }

    /** Where a sowing lies up to a day, or is booked in the stay that is about to be moved; asked only where a rack is held. */
    private static Set<UUID> lies(DSLContext tx, RackHolds holds, UUID sowing, LocalDate day, @Nullable UUID except) {
        if (holds.byRack().isEmpty()) {
            return Set.of();
        }
        Condition until = STAY.FROM_DAY.le(day).and(STAY.TO_DAY.ge(day));
        return Set.copyOf(tx.selectDistinct(STAY.PLACE_ID)
                .from(STAY)
                .where(
                        STAY.SOWING_ID.eq(sowing),
                        STAY.FROM_DAY.lt(STAY.TO_DAY),
                        except == null ? until : until.or(STAY.ID.eq(except)))
                .fetch(STAY.PLACE_ID));
    }

    /** How warm something would lie somewhere: as the mat is set, else as is asked. */
    WarmDays warm(DSLContext tx, PlaceAndDays spot, Band band, double asked, @Nullable UUID except) {
        CandidatePlace place = place(tx, spot.placeId());
        MatSpace mat = Objects.requireNonNull(place.mat());
        SpaceCalendar board = around(tx, place, except, spot.from(), spot.to()).board();
        return new StayWarmth(board, mat, band).over(spot.from(), spot.to(), asked);
    }

    /** Why a mat cannot be turned to a temperature on days. */
    Optional<SpaceRefusal> cannotBear(DSLContext tx, UUID mat, LocalDate first, LocalDate afterLast, double celsius) {
        Optional<SpaceRefusal> thermostat = beyondThermostat(tx, mat, celsius);
        if (thermostat.isPresent()) {
            return thermostat;
        }
        return whoLies(tx.select(MEMBER.CALLED, LOT.VARIETY, QUARTER_DAY.ON_DAY, QUARTER_DAY.LOW_C, QUARTER_DAY.HIGH_C))
                .where(
                        QUARTER_DAY.MAT_ID.eq(mat),
                        QUARTER_DAY.ON_DAY.ge(first),
                        QUARTER_DAY.ON_DAY.lt(afterLast),
                        QUARTER_DAY
                                .LOW_C
                                .gt(WholeDegree.of(celsius))
                                .or(QUARTER_DAY.HIGH_C.lt(WholeDegree.of(celsius))))
                .orderBy(QUARTER_DAY.ON_DAY)
                .limit(1)
                .fetchOptional(bears -> new SpaceRefusal.Unbearable(
                        celsius,
                        bears.value1(),
                        bears.value2(),
                        bears.value3(),
                        new Band(bears.value4(), bears.value5())));
    }

    private static Optional<SpaceRefusal> beyondThermostat(DSLContext tx, UUID mat, double celsius) {
        return tx.select(MAT.NAME, MAT.THERMOSTAT_LOW_C, MAT.THERMOSTAT_HIGH_C)
                .from(MAT)
                .where(MAT.ID.eq(mat))
                .fetchOptional(found -> new Held(found.value1(), new Thermostat(found.value2(), found.value3())))
                .filter(held -> !held.thermostat().contains(celsius))
                .map(held -> new SpaceRefusal.BeyondThermostat(held.mat(), held.thermostat(), celsius));
    }

    /** Joins what lies on quarters to its stay, sowing, grower and lot. */
    public static <R extends Record> SelectOnConditionStep<R> whoLies(SelectSelectStep<R> what) {
        return what.from(QUARTER_DAY)
                .join(STAY)
                .on(STAY.ID.eq(QUARTER_DAY.STAY_ID))
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID));
    }
}
