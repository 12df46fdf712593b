package warmshelf.placing;

import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceRefusal;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.allocation.WarmDays;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.sowing.SeedAgain;
import warmshelf.sowing.SeedClaimStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStore;

/** Decides on requests: the stay and the decision are written together or not at all. */
public final class PlacementStore {
    private final DSLContext sql;
    private final RequestStore requests;
    private final StayStore stays;
    private final SowingStore sowings;
    private final SeedClaimStore claims;

    PlacementStore(
            Database database, RequestStore requests, StayStore stays, SowingStore sowings, SeedClaimStore claims) {
        this.sql = database.sql();
        this.requests = requests;
        this.stays = stays;
        this.sowings = sowings;
        this.claims = claims;
    }

    /**
     * Lays a waiting request on a mat.
     *
     * @param warm the mat's set-points on those days
     * @param light where it goes after the mat; null: nothing is booked
     * @param lightOtherwise whether whoever places it sees to it that its seed gets light, whatever reaches the mat
     * @return the stay on the mat
     */
    public Decision<UUID> place(
            UUID sowing,
            PlaceAndDays spot,
            WarmDays warm,
            @Nullable PlaceAndDays light,
            boolean lightOtherwise,
            UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            // Held, so that a withdrawal at the same moment cannot leave a stay behind.
            sowings.findAndHold(tx, sowing);
            SpaceRequest request = waiting(tx, sowing);
            if (lightOtherwise) {
                requests.lightOtherwise(tx, sowing, true, by);
            }
            UUID stay = stays.layOnMat(tx, sowing, spot, warm, request.band(), by);
            if (light != null) {
                stays.layUnderLight(tx, sowing, light, by);
            }
            decide(tx, request, SpaceRequest.State.PLACED, "", by);
            return stay;
        }));
    }

    /** Lays a waiting request on a mat, where its seed gets what light it needs. */
    public Decision<UUID> place(UUID sowing, PlaceAndDays spot, WarmDays warm, @Nullable PlaceAndDays light, UUID by) {
        return place(sowing, spot, warm, light, false, by);
    }

    /** Says whether the seed of a request gets its light otherwise than from the place where it lies. */
    Decision<UUID> lightOtherwise(UUID sowing, boolean otherwise, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Optional<Sowing> held = sowings.findAndHold(tx, sowing);
            if (held.isEmpty() || requests.find(tx, sowing).isEmpty()) {
                throw Declined.missing();
            }
            requests.lightOtherwise(
                    tx, sowing, otherwise || !held.get().crop().light().isNeeded(), by);
            return sowing;
        }));
    }

    /** Refuses a waiting request with the reason. */
    Decision<UUID> refuse(UUID sowing, String reason, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            decide(inside.dsl(), waiting(inside.dsl(), sowing), SpaceRequest.State.REFUSED, reason, by);
            return sowing;
        }));
    }

    /**
     * Takes a decision back: a refused request waits again, and so does a placed one whose seed is not sown yet.
     *
     * @return whether a refused request has its seed again
     */
    Decision<SeedAgain> takeBack(UUID sowing, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Optional<Sowing> held = sowings.findAndHold(tx, sowing);
            @Nullable SpaceRequest request = requests.find(tx, sowing).orElse(null);
            boolean decided = request != null
                    && (request.state() == SpaceRequest.State.PLACED || request.state() == SpaceRequest.State.REFUSED);
            if (held.isEmpty()
                    || request == null
                    || !decided
                    || !held.get().stage().isBeforeSowing()) {
                throw Declined.refused(new PlacingRefusal.OnlyBeforeSowing());
            }
            StayBookStore.ofSowing(tx, sowing).forEach(stay -> stays.end(tx, stay, stay.from(), by));
            SeedAgain seed = request.state() == SpaceRequest.State.REFUSED
                    ? claims.claimAgain(tx, held.get(), by)
                    : SeedAgain.HELD;
            // How it gets its light was said of the place that it had.
            if (held.get().crop().light().isNeeded()) {
                requests.lightOtherwise(tx, sowing, false, by);
            }
            decide(tx, request, SpaceRequest.State.WAITING, "", by);
            return seed;
        }));
    }

    private SpaceRequest waiting(DSLContext tx, UUID sowing) {
        return requests.find(tx, sowing)
                .filter(SpaceRequest::isWaiting)
                .orElseThrow(() -> Declined.overtaken(new SpaceRefusal.DecidedMeanwhile()));
    }

    private void decide(DSLContext tx, SpaceRequest request, SpaceRequest.State state, String reason, UUID by) {
        requests.decide(tx, request, state, reason, by).orDecline();
    }
}
