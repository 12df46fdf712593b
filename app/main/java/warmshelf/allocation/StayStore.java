package warmshelf.allocation;

import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.decision.Declined;

/**
 * Lays sowings on places and takes them off again, within the caller's transaction. The database judges: quarter_day has one
 * row for every quarter and day that is taken, keyed by both, and on mats tied to the day's set-point and the crop's band.
 */
public final class StayStore {
    private final Audit audit;
    private final ClashStore clashes;

    public StayStore(Audit audit, ClashStore clashes) {
        this.audit = audit;
        this.clashes = clashes;
    }

    /** What is asked before something is laid. */
    ClashStore clashes() {
        return clashes;
    }

    /**
     * Lays a sowing on a mat as the mat is set, and at one set-point on days on which nothing is set.
     *
     * @return the stay's id
     * @throws Declined when a quarter is taken, the mat is out of service, or the temperature does not suit
     */
    public UUID layOnMat(DSLContext tx, UUID sowingId, PlaceAndDays spot, double celsius, Band band, UUID by) {
        MatDayStore.lock(tx, matOf(tx, spot.placeId()));
        return layOnMat(tx, sowingId, spot, clashes.warm(tx, spot, band, celsius, null), band, by);
    }

    /**
     * Lays a sowing on a mat at those set-points.
     *
     * @return the stay's id
     * @throws Declined when a quarter is taken, the mat is out of service, or the temperature does not suit everything on it
     */
    public UUID layOnMat(DSLContext tx, UUID sowingId, PlaceAndDays spot, WarmDays warm, Band band, UUID by) {
        UUID mat = matOf(tx, spot.placeId());
        MatDayStore.lock(tx, mat);
        refuseObstacles(tx, sowingId, spot, warm, band, RequestStore.needsLight(tx, sowingId), null);
        return QuarterDayStore.judged(() -> lay(tx, sowingId, spot, new WarmthNeed(mat, warm, band), by));
    }

    /**
     * Lays a sowing on a mat at the set-points that stand there day by day.
     *
     * @return the stay's id
     * @throws Declined when a quarter is taken, the mat is out of service, or a set-point is missing or does not suit
     */
    public UUID layAsSet(DSLContext tx, UUID sowingId, PlaceAndDays spot, Band band, UUID by) {
        UUID mat = matOf(tx, spot.placeId());
        MatDayStore.lock(tx, mat);
        Map<LocalDate, Double> setPoints = tx.select(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .where(MAT_DAY.MAT_ID.eq(mat), MAT_DAY.ON_DAY.ge(spot.from()), MAT_DAY.ON_DAY.lt(spot.to()))
                .fetchMap(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS);
        List<Double> celsius = spot.from()
                .datesUntil(spot.to())
                .map(day -> Optional.ofNullable(setPoints.get(day))
                        .orElseThrow(() -> Declined.refused(new SpaceRefusal.NoSetPoint(day))))
                .toList();
        return layOnMat(tx, sowingId, spot, new WarmDays(spot.from(), celsius), band, by);
    }

    /**
     * Lays a sowing under a light, where no temperature is promised.
     *
     * @return the stay's id
     * @throws Declined when a quarter is taken or the place is not under a light
     */
    public UUID layUnderLight(DSLContext tx, UUID sowingId, PlaceAndDays spot, UUID by) {
        if (!tx.fetchExists(PLACE, PLACE.ID.eq(spot.placeId()), PLACE.KIND.eq("lit"))) {
            throw Declined.overtaken(new SpaceRefusal.NotUnderLight());
        }
        refuseObstacles(tx, sowingId, spot, null, null, false, null);
        return QuarterDayStore.judged(() -> lay(tx, sowingId, spot, null, by));
    }

    /** Ends a stay: from the day given its quarters are free. A stay that has not begun lasts no day at all. */
    public void end(DSLContext tx, Stay stay, LocalDate freeFrom, UUID by) {
        end(tx, stay, freeFrom, null, by);
    }

    /** Calls a stay off that an undone plan had laid; its room, whoever left it, is held back from who waits. */
    public void callOff(DSLContext tx, Stay stay, UUID undonePlan, UUID by) {
        FreedRoomStore.holdBack(tx, stay, undonePlan);
        end(tx, stay, stay.from(), undonePlan, by);
    }

    private void end(DSLContext tx, Stay stay, LocalDate freeFrom, @Nullable UUID heldFor, UUID by) {
        if (!freeFrom.isBefore(stay.to())) {
            return;
        }
        LocalDate to = freeFrom.isBefore(stay.from()) ? stay.from() : freeFrom;
        tx.deleteFrom(QUARTER_DAY)
                .where(QUARTER_DAY.STAY_ID.eq(stay.id()), QUARTER_DAY.ON_DAY.ge(to))
                .execute();
        tx.update(STAY)
                .set(STAY.TO_DAY, to)
                .set(STAY.VERSION, STAY.VERSION.plus(1))
                .where(STAY.ID.eq(stay.id()))
                .execute();
        if (stay.isOnMat()) {
            FreedRoomStore.keep(tx, stay, to, heldFor, audit.now());
        }
        audit.write(tx, by, "end stay", "stay", stay.id(), "free from " + to);
    }

    /**
     * Lets a stay last longer at the same place: as its mat is set, else at the set-point of its last day.
     *
     * @throws Declined when someone else has the place by then, or the mat cannot be used or is set to what does not suit
     */
    public void extend(DSLContext tx, Stay stay, LocalDate to, UUID by) {
        PlaceAndDays more = new PlaceAndDays(stay.placeId(), stay.slot(), stay.to(), to);
        WarmthNeed warmth = stay.isOnMat() ? warmthFor(tx, stay, more) : null;
        // It lies there already: what light it gets is not asked again.
        refuseObstacles(
                tx,
                stay.sowingId(),
                more,
                warmth == null ? null : warmth.days(),
                warmth == null ? null : warmth.band(),
                false,
                stay.id());
        QuarterDayStore.judged(() -> {
            QuarterDayStore.insert(tx, stay.id(), more, warmth);
            return tx.update(STAY)
                    .set(STAY.TO_DAY, to)
                    .set(STAY.VERSION, STAY.VERSION.plus(1))
                    .where(STAY.ID.eq(stay.id()))
                    .execute();
        });
        audit.write(tx, by, "extend stay", "stay", stay.id(), "until " + to);
    }

    private WarmthNeed warmthFor(DSLContext tx, Stay stay, PlaceAndDays more) {
        WarmthNeed now = QuarterDayStore.warmthOf(tx, stay);
        MatDayStore.lock(tx, now.matId());
        return new WarmthNeed(
                now.matId(), clashes.warm(tx, more, now.band(), now.days().last(), stay.id()), now.band());
    }

    /**
     * Lets a stay under a light begin earlier, where its place is free until then.
     *
     * @return whether it does; otherwise it begins as it was booked
     */
    public boolean beginEarlier(DSLContext tx, Stay stay, LocalDate from, UUID by) {
        PlaceAndDays before = new PlaceAndDays(stay.placeId(), stay.slot(), from, stay.from());
        if (stay.isOnMat()
                || !clashes.obstacles(tx, stay.sowingId(), before, null, null, false, stay.id())
                        .isEmpty()) {
            return false;
        }
        QuarterDayStore.judged(() -> {
            QuarterDayStore.insert(tx, stay.id(), before, null);
            return tx.update(STAY)
                    .set(STAY.FROM_DAY, from)
                    .set(STAY.VERSION, STAY.VERSION.plus(1))
                    .where(STAY.ID.eq(stay.id()))
                    .execute();
        });
        audit.write(tx, by, "begin stay earlier", "stay", stay.id(), "from " + from);
        return true;
    }

    /** Lets the place under a light that is booked for the end of a stay on a mat follow to another end, as far as its room allows. */
    public void followUnderLight(DSLContext tx, UUID sowing, LocalDate end, LocalDate newEnd, UUID by) {
        StayBookStore.ofSowing(tx, sowing).stream()
                .filter(stay -> !stay.isOnMat() && stay.from().equals(end))
                .forEach(booked -> {
                    if (newEnd.isBefore(end)) {
                        beginEarlier(tx, booked, newEnd, by);
                    } else if (newEnd.isAfter(end) && newEnd.isBefore(booked.to())) {
                        beginLater(tx, booked, newEnd, by);
                    }
                });
    }

    private void beginLater(DSLContext tx, Stay stay, LocalDate from, UUID by) {
        tx.deleteFrom(QUARTER_DAY)
                .where(QUARTER_DAY.STAY_ID.eq(stay.id()), QUARTER_DAY.ON_DAY.lt(from))
                .execute();
        tx.update(STAY)
                .set(STAY.FROM_DAY, from)
                .set(STAY.VERSION, STAY.VERSION.plus(1))
                .where(STAY.ID.eq(stay.id()))
                .execute();
        audit.write(tx, by, "begin stay later", "stay", stay.id(), "from " + from);
    }

    void refuseObstacles(
            DSLContext tx,
            UUID sowing,
            PlaceAndDays spot,
            @Nullable WarmDays warm,
            @Nullable Band band,
            boolean needsLight,
            @Nullable UUID except) {
        List<Obstacle> obstacles = clashes.obstacles(tx, sowing, spot, warm, band, needsLight, except);
        if (!obstacles.isEmpty()) {
            throw Declined.overtaken(new SpaceRefusal.InTheWay(obstacles));
        }
    }

    private static UUID matOf(DSLContext tx, UUID place) {
        UUID mat = tx.select(PLACE.MAT_ID).from(PLACE).where(PLACE.ID.eq(place)).fetchSingle(PLACE.MAT_ID);
        if (mat == null) {
            throw Declined.refused(new SpaceRefusal.NoBottomHeat());
        }
        return mat;
    }

    UUID lay(DSLContext tx, UUID sowingId, PlaceAndDays spot, @Nullable WarmthNeed warmth, UUID by) {
        UUID stay = insertStay(tx, sowingId, spot, by);
        QuarterDayStore.insert(tx, stay, spot, warmth);
        writeLaid(tx, stay, spot, warmth == null ? "lay under light" : "lay on mat", by);
        return stay;
    }

    private UUID insertStay(DSLContext tx, UUID sowingId, PlaceAndDays spot, UUID by) {
        UUID stay = UUID.randomUUID();
        tx.insertInto(STAY)
                .set(STAY.ID, stay)
                .set(STAY.SOWING_ID, sowingId)
                .set(STAY.PLACE_ID, spot.placeId())
                .set(STAY.FIRST_QUARTER, spot.slot().firstQuarter())
                .set(STAY.QUARTERS, spot.slot().quarters())
                .set(STAY.FROM_DAY, spot.from())
                .set(STAY.TO_DAY, spot.to())
                .set(STAY.MADE_BY, by)
                .set(STAY.MADE_AT, audit.now())
                .set(STAY.VERSION, 1)
                .execute();
        return stay;
    }

    private void writeLaid(DSLContext tx, UUID stay, PlaceAndDays spot, String action, UUID by) {
        audit.write(
                tx,
                by,
                action,
                "stay",
                stay,
                "place %s, %s, %s to before %s"
                        .formatted(spot.placeId(), spot.slot().words(), spot.from(), spot.to()));
    }
}
