package warmshelf.allocation;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.STAY;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Declined;

/** Lays what lies on a place elsewhere or on other days, within the caller's transaction. */
public final class StayRelayStore {
    private final StayStore stays;

    public StayRelayStore(StayStore stays) {
        this.stays = stays;
    }

    /**
     * Lays a stay elsewhere or on other days, as if it had been laid there at first. The mats and the stay are held.
     *
     * @param warm the set-points at the new place; null under a light
     * @return the stay's id
     * @throws Declined when something is in the way
     */
    public UUID relay(DSLContext tx, Stay stay, PlaceAndDays spot, @Nullable WarmDays warm) {
        WarmthNeed warmth = warmthAt(tx, stay, spot, warm);
        stays.refuseObstacles(
                tx,
                stay.sowingId(),
                spot,
                warm,
                warmth == null ? null : warmth.band(),
                needsLightAt(tx, stay, spot),
                stay.id());
        tx.deleteFrom(QUARTER_DAY).where(QUARTER_DAY.STAY_ID.eq(stay.id())).execute();
        return QuarterDayStore.judged(() -> {
            tx.update(STAY)
                    .set(STAY.PLACE_ID, spot.placeId())
                    .set(STAY.FIRST_QUARTER, spot.slot().firstQuarter())
                    .set(STAY.FROM_DAY, spot.from())
                    .set(STAY.TO_DAY, spot.to())
                    .set(STAY.VERSION, STAY.VERSION.plus(1))
                    .where(STAY.ID.eq(stay.id()))
                    .execute();
            QuarterDayStore.insert(tx, stay.id(), spot, warmth);
            return stay.id();
        });
    }

    /**
     * Carries what lies there elsewhere: its stay ends on the first day of the spot and another begins.
     *
     * @param warm the set-points at the new place; null under a light
     * @return the new stay's id
     * @throws Declined when something is in the way
     */
    public UUID carry(DSLContext tx, Stay stay, PlaceAndDays spot, @Nullable WarmDays warm, UUID by) {
        WarmthNeed warmth = warmthAt(tx, stay, spot, warm);
        stays.refuseObstacles(
                tx,
                stay.sowingId(),
                spot,
                warm,
                warmth == null ? null : warmth.band(),
                needsLightAt(tx, stay, spot),
                stay.id());
        stays.end(tx, stay, spot.from(), by);
        return QuarterDayStore.judged(() -> stays.lay(tx, stay.sowingId(), spot, warmth, by));
    }

    /** How warm a stay would lie somewhere else: as the mat is set, else as is asked; null under a light. */
    @Nullable
    public WarmDays warmElsewhere(DSLContext tx, Stay stay, PlaceAndDays spot, @Nullable Double asked) {
        return asked == null
                ? null
                : stays.clashes()
                        .warm(tx, spot, QuarterDayStore.warmthOf(tx, stay).band(), asked, stay.id());
    }

    /** Everything in the way of a stay's lying somewhere else. */
    public List<Obstacle> obstacles(DSLContext tx, Stay stay, PlaceAndDays spot, @Nullable WarmDays warm) {
        return stays.clashes()
                .obstacles(
                        tx,
                        stay.sowingId(),
                        spot,
                        warm,
                        warm == null ? null : QuarterDayStore.warmthOf(tx, stay).band(),
                        needsLightAt(tx, stay, spot),
                        stay.id());
    }

    /** On the mat on which it lies already it may be moved about, whatever light reaches that. */
    private static boolean needsLightAt(DSLContext tx, Stay stay, PlaceAndDays spot) {
        return !matFor(tx, spot.placeId()).equals(matFor(tx, stay.placeId()))
                && RequestStore.needsLight(tx, stay.sowingId());
    }

    private static Optional<UUID> matFor(DSLContext tx, UUID place) {
        return Optional.ofNullable(
                tx.select(PLACE.MAT_ID).from(PLACE).where(PLACE.ID.eq(place)).fetchSingle(PLACE.MAT_ID));
    }

    /** What a stay would need of the mat at another place; null under a light. */
    private static @Nullable WarmthNeed warmthAt(DSLContext tx, Stay stay, PlaceAndDays spot, @Nullable WarmDays warm) {
        UUID mat = tx.select(PLACE.MAT_ID)
                .from(PLACE)
                .where(PLACE.ID.eq(spot.placeId()))
                .fetchSingle(PLACE.MAT_ID);
        boolean toMat = mat != null;
        if (toMat != stay.isOnMat() || toMat != (warm != null)) {
            throw Declined.refused(new SpaceRefusal.OtherKind());
        }
        return mat == null || warm == null
                ? null
                : new WarmthNeed(mat, warm, QuarterDayStore.warmthOf(tx, stay).band());
    }
}
