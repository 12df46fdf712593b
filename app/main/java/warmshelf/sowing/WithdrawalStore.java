package warmshelf.sowing;

import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.WITHDRAWAL;
import static warmshelf.db.generated.Tables.WITHDRAWAL_STAY;

import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.db.Audit;
import warmshelf.db.generated.tables.records.WithdrawalRecord;
import warmshelf.db.generated.tables.records.WithdrawalStayRecord;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Withdraws sowings that are not sown, and takes that back for a day: their place again only where it is still to be had. */
public final class WithdrawalStore {
    private static final Period TAKEN_BACK_FOR = Period.ofDays(1);

    private final DSLContext sql;
    private final Audit audit;
    private final SowingStore sowings;
    private final RequestStore requests;
    private final StayStore stays;
    private final SeedClaimStore claims;

    WithdrawalStore(
            DSLContext sql,
            Audit audit,
            SowingStore sowings,
            RequestStore requests,
            StayStore stays,
            SeedClaimStore claims) {
        this.sql = sql;
        this.audit = audit;
        this.sowings = sowings;
        this.requests = requests;
        this.stays = stays;
        this.claims = claims;
    }

    /**
     * What a withdrawal gave up.
     *
     * @param places where it was to lie, in order of time; empty where it had no place
     */
    public record GivenUp(Sowing sowing, List<Stay> places) {}

    /**
     * What came of taking a withdrawal back.
     *
     * @param places where it is to lie again
     * @param lostPlace whether it had a place on a mat and waits for another one now
     * @param lostLight whether its place under a light is gone although it has its place on the mat again
     * @param seed whether its seed is held again
     */
    public record TakenBack(Sowing sowing, List<Stay> places, boolean lostPlace, boolean lostLight, SeedAgain seed) {}

    /** Withdraws a sowing that has not been sown: its request ends, and its places are free. */
    public Decision<GivenUp> withdraw(UUID id, UUID by) {
        return withdraw(sql, id, by);
    }

    /** The same within the caller's transaction. */
    Decision<GivenUp> withdraw(DSLContext within, UUID id, UUID by) {
        return Decision.of(() -> within.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Sowing sowing = sowings.findAndHold(tx, id).orElseThrow(Declined::missing);
            if (!sowing.stage().isBeforeSowing()) {
                throw Declined.refused(new SowingRefusal.NotToWithdraw(sowing.title(), sowing.stage()));
            }
            List<Stay> places = StayBookStore.ofSowing(tx, id);
            @Nullable SpaceRequest request = requests.find(tx, id).orElse(null);
            keep(tx, sowing, places, request, by);
            sowings.moveTo(tx, id, SowingStage.WITHDRAWN);
            places.forEach(stay -> stays.end(tx, stay, stay.from(), by));
            if (request != null) {
                requests.decide(tx, request, SpaceRequest.State.WITHDRAWN, "", by)
                        .orDecline();
            }
            audit.write(tx, by, "withdraw", "sowing", id, sowing.title());
            return new GivenUp(sowing, places);
        }));
    }

    private void keep(DSLContext tx, Sowing sowing, List<Stay> places, @Nullable SpaceRequest request, UUID by) {
        UUID id = UUID.randomUUID();
        tx.insertInto(WITHDRAWAL)
                .set(WITHDRAWAL.ID, id)
                .set(WITHDRAWAL.SOWING_ID, sowing.id())
                .set(WITHDRAWAL.STAGE_BEFORE, sowing.stage().word())
                .set(
                        WITHDRAWAL.REQUEST_BEFORE,
                        request == null ? null : request.state().word())
                .set(WITHDRAWAL.REASON_BEFORE, request == null ? "" : request.reason())
                .set(WITHDRAWAL.MADE_BY, by)
                .set(WITHDRAWAL.MADE_AT, audit.now())
                .execute();
        for (Stay stay : places) {
            Double celsius = tx.select(DSL.min(QUARTER_DAY.CELSIUS))
                    .from(QUARTER_DAY)
                    .where(QUARTER_DAY.STAY_ID.eq(stay.id()))
                    .fetchSingle()
                    .value1();
            tx.insertInto(WITHDRAWAL_STAY)
                    .set(WITHDRAWAL_STAY.WITHDRAWAL_ID, id)
                    .set(WITHDRAWAL_STAY.STAY_ID, stay.id())
                    .set(WITHDRAWAL_STAY.PLACE_ID, stay.placeId())
                    .set(WITHDRAWAL_STAY.FIRST_QUARTER, stay.slot().firstQuarter())
                    .set(WITHDRAWAL_STAY.QUARTERS, stay.slot().quarters())
                    .set(WITHDRAWAL_STAY.FROM_DAY, stay.from())
                    .set(WITHDRAWAL_STAY.TO_DAY, stay.to())
                    .set(WITHDRAWAL_STAY.CELSIUS, celsius)
                    .execute();
        }
    }

    /** Whether a withdrawal can be taken back: it stands, and is not older than a day. */
    public boolean mayTakeBack(Sowing sowing) {
        return sowing.stage() == SowingStage.WITHDRAWN && last(sql, sowing.id()).isPresent();
    }

    private Optional<WithdrawalRecord> last(DSLContext from, UUID sowing) {
        return from.selectFrom(WITHDRAWAL)
                .where(
                        WITHDRAWAL.SOWING_ID.eq(sowing),
                        WITHDRAWAL.TAKEN_BACK_AT.isNull(),
                        WITHDRAWAL.MADE_AT.ge(audit.now().minus(TAKEN_BACK_FOR)))
                .orderBy(WITHDRAWAL.MADE_AT.desc(), WITHDRAWAL.ID)
                .limit(1)
                .fetchOptional();
    }

    /**
     * Takes the last withdrawal of a sowing back. It lies again where it was to lie if that room is free and warm enough;
     * otherwise it waits. A no when there is none to take back, or it is older than a day.
     */
    public Decision<TakenBack> takeBack(UUID id, UUID by) {
        return takeBack(sql, id, by);
    }

    /** The same within the caller's transaction. */
    public Decision<TakenBack> takeBack(DSLContext within, UUID id, UUID by) {
        return Decision.of(() -> within.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Sowing sowing = sowings.findAndHold(tx, id).orElseThrow(Declined::missing);
            WithdrawalRecord withdrawal = Optional.of(sowing.stage())
                    .filter(SowingStage.WITHDRAWN::equals)
                    .flatMap(withdrawn -> last(tx, id))
                    .orElseThrow(() -> Declined.overtaken(new SowingRefusal.NoWithdrawal(sowing.title())));
            withdrawal.attach(tx.configuration());
            withdrawal.setTakenBackBy(by);
            withdrawal.setTakenBackAt(audit.now());
            withdrawal.update();
            sowings.moveTo(tx, id, SowingStage.named(withdrawal.getStageBefore()));
            TakenBack back = restore(tx, sowing, withdrawal, by);
            audit.write(tx, by, "take withdrawal back", "sowing", id, sowing.title());
            return back;
        }));
    }

    private TakenBack restore(DSLContext tx, Sowing sowing, WithdrawalRecord withdrawal, UUID by) {
        // What was refused a place held no seed.
        boolean heldSeed = !SpaceRequest.State.REFUSED.word().equals(withdrawal.getRequestBefore());
        SeedAgain seed = heldSeed ? claims.claimAgain(tx, sowing, by) : SeedAgain.HELD;
        @Nullable SpaceRequest request = requests.find(tx, sowing.id()).orElse(null);
        if (request == null || withdrawal.getRequestBefore() == null) {
            return new TakenBack(sowing, List.of(), false, false, seed);
        }
        SpaceRequest.State before = SpaceRequest.State.named(withdrawal.getRequestBefore());
        if (before != SpaceRequest.State.PLACED) {
            requests.decide(tx, request, before, withdrawal.getReasonBefore(), by)
                    .orDecline();
            return new TakenBack(sowing, List.of(), false, false, seed);
        }
        List<WithdrawalStayRecord> places = tx.selectFrom(WITHDRAWAL_STAY)
                .where(WITHDRAWAL_STAY.WITHDRAWAL_ID.eq(withdrawal.getId()))
                .orderBy(WITHDRAWAL_STAY.FROM_DAY, WITHDRAWAL_STAY.STAY_ID)
                .fetch();
        boolean onMat = false;
        boolean allLights = true;
        for (WithdrawalStayRecord place : places) {
            boolean mat = place.getCelsius() != null;
            boolean lies = (mat || onMat) && layAgain(tx, sowing.id(), request, place, by);
            onMat = onMat || (mat && lies);
            allLights = allLights && (mat || lies);
        }
        requests.decide(tx, request, onMat ? SpaceRequest.State.PLACED : SpaceRequest.State.WAITING, "", by)
                .orDecline();
        return new TakenBack(sowing, StayBookStore.ofSowing(tx, sowing.id()), !onMat, onMat && !allLights, seed);
    }

    /** Whether it lies there again; somebody else may have the room by now, or have set the mat otherwise. */
    private boolean layAgain(DSLContext tx, UUID sowing, SpaceRequest request, WithdrawalStayRecord place, UUID by) {
        PlaceAndDays spot = new PlaceAndDays(
                place.getPlaceId(),
                new Slot(place.getFirstQuarter(), place.getQuarters()),
                place.getFromDay(),
                place.getToDay());
        Double celsius = place.getCelsius();
        try {
            tx.transaction(inside -> {
                if (celsius == null) {
                    stays.layUnderLight(inside.dsl(), sowing, spot, by);
                } else {
                    stays.layOnMat(inside.dsl(), sowing, spot, celsius, request.band(), by);
                }
            });
            return true;
        } catch (Declined taken) {
            return false;
        }
    }
}
