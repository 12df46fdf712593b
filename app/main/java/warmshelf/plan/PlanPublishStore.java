package warmshelf.plan;

import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SEASON_PLAN_BEFORE;
import static warmshelf.db.generated.Tables.SEASON_PLAN_STAY;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Refused;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;

/** Publishes a plan, all or nothing, with the database as the judge. */
final class PlanPublishStore {
    private final SowingStores stores;
    private final PlanStore plans;
    private final PlanNoteStore notes;
    private final PlanWarmthStore warmth;
    private final FreedSpaceStore freed;

    PlanPublishStore(
            SowingStores stores, PlanStore plans, PlanNoteStore notes, PlanWarmthStore warmth, FreedSpaceStore freed) {
        this.stores = stores;
        this.plans = plans;
        this.notes = notes;
        this.warmth = warmth;
        this.freed = freed;
    }

    /**
     * Lays everything that the draft places, sets the mats, and tells the members.
     *
     * @return the id of the plan; a no when somebody changed or published it since that version, or when space, warmth or a
     *     request has changed meanwhile, and then nothing is published
     */
    Decision<UUID> publish(UUID plan, int version, PlanDraft draft, UUID by) {
        return Decision.of(() -> stores.database().sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            plans.publish(tx, plan, version, by);
            Map<String, PlacedStay> placed = new HashMap<>();
            draft.plan().placed().forEach(stay -> placed.put(stay.request(), stay));
            hold(tx, draft);
            for (Asked asked : draft.asked().asked().values()) {
                if (asked.freed() != null
                        && !stays(draft, asked, placed.get(asked.wanted().id()))) {
                    free(tx, plan, asked, draft.asked().today(), by);
                }
            }
            setPoints(tx, plan, draft, by);
            freed.offerAll(tx);
            for (PlacedStay stay : draft.plan().placed()) {
                lay(tx, plan, draft, stay, by);
            }
            tell(tx, plan, draft);
            return plan;
        }));
    }

    /** In one order, sowings before mats as everyone does it, so that two who write at once take turns. */
    private void hold(DSLContext tx, PlanDraft draft) {
        draft.asked().asked().values().stream()
                .map(asked -> asked.sowing().id())
                .sorted()
                .forEach(id -> stores.sowings().findAndHold(tx, id));
    }

    /** Whether a freed stay is planned where it lies already, also under the light. */
    private static boolean stays(PlanDraft draft, Asked asked, @Nullable PlacedStay planned) {
        return planned != null
                && draft.asked().keepsMat(asked, planned)
                && draft.asked().keepsLight(asked, planned);
    }

    private void free(DSLContext tx, UUID plan, Asked asked, LocalDate today, UUID by) {
        Stay freed = Objects.requireNonNull(asked.freed());
        Optional<Stay> now = StayBookStore.find(tx, freed.id());
        SpaceRequest request = stores.requests()
                .find(tx, freed.sowingId())
                .filter(found -> found.state() == SpaceRequest.State.PLACED)
                .orElseThrow(() -> Declined.overtaken(new PlanRefusal.BegunOrChanged(asked.title())));
        boolean unchanged = now.isPresent()
                && now.get().version() == freed.version()
                && !now.get().isBegunBy(today)
                && stores.requests().decide(tx, request, SpaceRequest.State.WAITING, "", by) instanceof Decision.Done;
        if (!unchanged) {
            throw Declined.overtaken(new PlanRefusal.BegunOrChanged(asked.title()));
        }
        takeOff(tx, plan, freed, by);
        // As it is now: what was booked under a light may have been moved since the plan was made.
        StayBookStore.ofSowing(tx, freed.sowingId()).stream()
                .filter(stay -> !stay.isOnMat())
                .forEach(light -> takeOff(tx, plan, light, by));
    }

    private void takeOff(DSLContext tx, UUID plan, Stay stay, UUID by) {
        tx.insertInto(SEASON_PLAN_BEFORE)
                .set(SEASON_PLAN_BEFORE.PLAN_ID, plan)
                .set(SEASON_PLAN_BEFORE.STAY_ID, stay.id())
                .set(SEASON_PLAN_BEFORE.PLACE_ID, stay.placeId())
                .set(SEASON_PLAN_BEFORE.FIRST_QUARTER, stay.slot().firstQuarter())
                .set(SEASON_PLAN_BEFORE.QUARTERS, stay.slot().quarters())
                .set(SEASON_PLAN_BEFORE.FROM_DAY, stay.from())
                .set(SEASON_PLAN_BEFORE.TO_DAY, stay.to())
                .set(SEASON_PLAN_BEFORE.CELSIUS, celsius(tx, stay))
                .execute();
        stores.stays().end(tx, stay, stay.from(), by);
    }

    private static @Nullable Double celsius(DSLContext tx, Stay stay) {
        return tx.select(DSL.min(QUARTER_DAY.CELSIUS))
                .from(QUARTER_DAY)
                .where(QUARTER_DAY.STAY_ID.eq(stay.id()))
                .fetchSingle()
                .value1();
    }

    private void setPoints(DSLContext tx, UUID plan, PlanDraft draft, UUID by) {
        draft.plan()
                .setPoints()
                .forEach(span -> warmth.set(tx, plan, mat(draft, span.mat()).id(), span, by));
    }

    private void lay(DSLContext tx, UUID plan, PlanDraft draft, PlacedStay planned, UUID by) {
        Asked asked = Objects.requireNonNull(draft.asked().asked().get(planned.request()));
        if (asked.freed() != null && stays(draft, asked, planned)) {
            return;
        }
        SpaceRequest request = stores.requests()
                .find(tx, asked.sowing().id())
                .filter(SpaceRequest::isWaiting)
                .orElseThrow(() -> Declined.overtaken(new PlanRefusal.DoesNotWait(asked.title())));
        PlaceAndDays spot = new PlaceAndDays(
                placeOf(draft, planned),
                planned.slot(),
                planned.days().from(),
                planned.days().to());
        try {
            keep(tx, plan, stores.stays().layAsSet(tx, request.sowingId(), spot, request.band(), by));
            PlacedStay.LitStay light = planned.light();
            if (light != null) {
                PlaceAndDays under = new PlaceAndDays(
                        litPlaceOf(draft, light),
                        light.slot(),
                        light.days().from(),
                        light.days().to());
                keep(tx, plan, stores.stays().layUnderLight(tx, request.sowingId(), under, by));
            }
        } catch (Declined declined) {
            throw declined.about(new PlanRefusal.InTheWay(asked.title(), declined.reason()));
        }
        stores.requests()
                .decide(tx, request, SpaceRequest.State.PLACED, "", by)
                .refusal()
                .ifPresent(overtaken -> {
                    throw Declined.overtaken(new PlanRefusal.DecidedMeanwhile(asked.title()));
                });
    }

    private static void keep(DSLContext tx, UUID plan, UUID stay) {
        tx.insertInto(SEASON_PLAN_STAY)
                .set(SEASON_PLAN_STAY.PLAN_ID, plan)
                .set(SEASON_PLAN_STAY.STAY_ID, stay)
                .execute();
    }

    private static MatSpace mat(PlanDraft draft, String name) {
        return Optional.ofNullable(draft.asked().mats().get(name))
                .orElseThrow(() -> Declined.overtaken(new PlanRefusal.MatGone(name)));
    }

    private static UUID placeOf(PlanDraft draft, PlacedStay planned) {
        return draft.asked()
                .placeOf(planned)
                .orElseThrow(() -> Declined.overtaken(new PlanRefusal.PlaceGone(planned.place(), planned.mat())));
    }

    private static UUID litPlaceOf(PlanDraft draft, PlacedStay.LitStay planned) {
        return draft.asked()
                .placeOf(planned)
                .orElseThrow(() -> Declined.overtaken(new PlanRefusal.LightGone(planned.place(), planned.shelf())));
    }

    private void tell(DSLContext tx, UUID plan, PlanDraft draft) {
        for (PlacedStay planned : draft.plan().placed()) {
            Asked asked = Objects.requireNonNull(draft.asked().asked().get(planned.request()));
            if (asked.freed() == null || !stays(draft, asked, planned)) {
                tell(tx, plan, asked.sowing(), true, PlanNews.of(PlanWords.told(draft.asked(), asked, planned)));
            }
        }
        for (Refused refused : draft.plan().refused()) {
            Asked asked = Objects.requireNonNull(draft.asked().asked().get(refused.request()));
            tell(tx, plan, asked.sowing(), false, PlanWords.told(asked.sowing().title(), refused));
            new NewsBookStore(stores.audit())
                    .tellDecision(
                            tx,
                            NewsEvent.ofSowing(NewsKind.NO_PLACE, asked.sowing().id(), null));
        }
    }

    private void tell(DSLContext tx, UUID plan, Sowing sowing, boolean placed, PlanNews news) {
        notes.tell(tx, plan, sowing.grower().memberId(), sowing.id(), placed, news);
    }
}
