package warmshelf.plan;

import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.SEASON_PLAN_STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceClash;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Spot;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.plan.PlacedStay;
import warmshelf.allocation.plan.Refused;
import warmshelf.allocation.plan.SetPointSpan;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;

/** Publishes a plan, all or nothing, with the database as the judge; and takes a publication back. */
final class PublishStore {
    private static final String BEGUN_OR_CHANGED =
            "%s was to be moved, but has begun or changed in the meantime. Please plan anew.";

    private final SowingStores stores;
    private final PlanStore plans;
    private final NoteStore notes;

    PublishStore(SowingStores stores, PlanStore plans, NoteStore notes) {
        this.stores = stores;
        this.plans = plans;
        this.notes = notes;
    }

    /** What an undo did: how many wait again, and what has begun and therefore stays. */
    record Undone(int waiting, List<String> begun) {}

    /**
     * Lays everything that the draft places, sets the mats, and tells the members.
     *
     * @return false when somebody changed or published the plan since that version
     * @throws SpaceClash when space, warmth or a request has changed meanwhile; then nothing is published
     */
    boolean publish(UUID plan, int version, PlanDraft draft, UUID by) {
        return stores.database().sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            if (!plans.publish(tx, plan, version, by)) {
                return false;
            }
            Map<String, PlacedStay> placed = new HashMap<>();
            draft.plan().placed().forEach(stay -> placed.put(stay.request(), stay));
            hold(tx, draft);
            for (Asked asked : draft.asked().asked().values()) {
                if (asked.freed() != null
                        && !stays(draft, asked, placed.get(asked.wanted().id()))) {
                    free(tx, asked, draft.asked().today(), by);
                }
            }
            setPoints(tx, draft, by);
            for (PlacedStay stay : draft.plan().placed()) {
                lay(tx, plan, draft, stay, by);
            }
            tell(tx, plan, draft);
            return true;
        });
    }

    /** In one order, sowings before mats as everyone does it, so that two who write at once take turns. */
    private void hold(DSLContext tx, PlanDraft draft) {
        draft.asked().asked().values().stream()
                .map(asked -> asked.sowing().id())
                .sorted()
                .forEach(id -> stores.sowings().findAndHold(tx, id));
    }

    /** Whether a freed stay is planned where it lies already. */
    private static boolean stays(PlanDraft draft, Asked asked, @org.jspecify.annotations.Nullable PlacedStay planned) {
        Stay freed = Objects.requireNonNull(asked.freed());
        return planned != null
                && placeOf(draft, planned).equals(freed.placeId())
                && planned.slot().equals(freed.slot())
                && planned.days().from().equals(freed.from())
                && planned.days().to().equals(freed.to());
    }

    private void free(DSLContext tx, Asked asked, LocalDate today, UUID by) {
        Stay freed = Objects.requireNonNull(asked.freed());
        Optional<Stay> now = StayBookStore.find(tx, freed.id());
        SpaceRequest request = stores.requests()
                .find(tx, freed.sowingId())
                .filter(found -> found.state() == SpaceRequest.State.PLACED)
                .orElseThrow(() -> new SpaceClash(BEGUN_OR_CHANGED.formatted(asked.title())));
        boolean unchanged = now.isPresent()
                && now.get().version() == freed.version()
                && !now.get().isBegunBy(today)
                && stores.requests().decide(tx, request, SpaceRequest.State.WAITING, "", by);
        if (!unchanged) {
            throw new SpaceClash(BEGUN_OR_CHANGED.formatted(asked.title()));
        }
        stores.stays().end(tx, freed, freed.from(), by);
    }

    private void setPoints(DSLContext tx, PlanDraft draft, UUID by) {
        for (SetPointSpan span : draft.plan().setPoints()) {
            UUID mat = mat(draft, span.mat()).id();
            List<Integer> now = tx.select(MAT_DAY.CELSIUS)
                    .from(MAT_DAY)
                    .where(
                            MAT_DAY.MAT_ID.eq(mat),
                            MAT_DAY.ON_DAY.ge(span.days().from()),
                            MAT_DAY.ON_DAY.lt(span.days().to()))
                    .fetch(MAT_DAY.CELSIUS);
            boolean setAlready =
                    now.size() == span.days().length() && now.stream().allMatch(celsius -> celsius == span.celsius());
            if (!setAlready) {
                stores.stays().setPoint(tx, mat, span.days().from(), span.days().to(), span.celsius(), by);
            }
        }
    }

    private void lay(DSLContext tx, UUID plan, PlanDraft draft, PlacedStay planned, UUID by) {
        Asked asked = Objects.requireNonNull(draft.asked().asked().get(planned.request()));
        if (asked.freed() != null && stays(draft, asked, planned)) {
            return;
        }
        SpaceRequest request = stores.requests()
                .find(tx, asked.sowing().id())
                .filter(SpaceRequest::isWaiting)
                .orElseThrow(() -> new SpaceClash(asked.title() + " does not wait any more."));
        Spot spot = new Spot(
                placeOf(draft, planned),
                planned.slot(),
                planned.days().from(),
                planned.days().to());
        UUID stay;
        try {
            stay = stores.stays().layAsSet(tx, request.sowingId(), spot, request.band(), by);
        } catch (SpaceClash clash) {
            throw new SpaceClash(asked.title() + ": " + clash.sentence());
        }
        if (!stores.requests().decide(tx, request, SpaceRequest.State.PLACED, "", by)) {
            throw new SpaceClash(asked.title() + " was decided on a moment ago.");
        }
        tx.insertInto(SEASON_PLAN_STAY)
                .set(SEASON_PLAN_STAY.PLAN_ID, plan)
                .set(SEASON_PLAN_STAY.STAY_ID, stay)
                .execute();
    }

    private static MatSpace mat(PlanDraft draft, String name) {
        return Optional.ofNullable(draft.asked().mats().get(name))
                .orElseThrow(() -> new SpaceClash("Mat %s is not there any more. Please plan anew.".formatted(name)));
    }

    private static UUID placeOf(PlanDraft draft, PlacedStay planned) {
        List<UUID> places = mat(draft, planned.mat()).places();
        if (planned.place() > places.size()) {
            throw new SpaceClash(
                    "Mat %s has no place %d any more. Please plan anew.".formatted(planned.mat(), planned.place()));
        }
        return places.get(planned.place() - 1);
    }

    private void tell(DSLContext tx, UUID plan, PlanDraft draft) {
        for (PlacedStay planned : draft.plan().placed()) {
            Asked asked = Objects.requireNonNull(draft.asked().asked().get(planned.request()));
            tell(tx, plan, asked.sowing(), true, PlanWords.told(asked.sowing().title(), planned));
        }
        for (Refused refused : draft.plan().refused()) {
            Asked asked = Objects.requireNonNull(draft.asked().asked().get(refused.request()));
            String words = draft.asked().named(PlanWords.told(asked.sowing().title(), refused));
            tell(tx, plan, asked.sowing(), false, words);
        }
    }

    private void tell(DSLContext tx, UUID plan, Sowing sowing, boolean placed, String words) {
        notes.tell(tx, plan, sowing.grower().memberId(), sowing.id(), placed, words);
    }

    /**
     * Takes the stays of a publication back that have not begun; their requests wait again.
     *
     * @return empty when it is not published, or everything of it has begun
     */
    Optional<Undone> undo(UUID plan, LocalDate today, UUID by) {
        return stores.database().sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int waiting = 0;
            List<String> begun = new ArrayList<>();
            for (Stay stay : published(tx, plan)) {
                Optional<Sowing> held = stores.sowings().findAndHold(tx, stay.sowingId());
                if (held.isEmpty() || held.get().stage().isOver()) {
                    continue;
                }
                Sowing sowing = held.get();
                if (stay.isBegunBy(today) || !sowing.stage().isBeforeSowing()) {
                    begun.add("%s's %s".formatted(sowing.grower().name(), sowing.title()));
                    continue;
                }
                waiting += takeBack(tx, plan, stay, sowing, by);
            }
            if (waiting == 0 || !plans.undo(tx, plan, by)) {
                return Optional.<Undone>empty();
            }
            stores.audit().write(tx, by, "undo plan", "plan", plan, waiting + " wait again");
            return Optional.of(new Undone(waiting, begun));
        });
    }

    private int takeBack(DSLContext tx, UUID plan, Stay stay, Sowing sowing, UUID by) {
        Optional<SpaceRequest> request =
                stores.requests().find(tx, stay.sowingId()).filter(found -> found.state() == SpaceRequest.State.PLACED);
        if (request.isEmpty()) {
            return 0;
        }
        stores.stays().end(tx, stay, stay.from(), by);
        stores.requests().decide(tx, request.get(), SpaceRequest.State.WAITING, "", by);
        tell(
                tx,
                plan,
                sowing,
                false,
                "The plan was taken back, and your %s waits for a place again.".formatted(sowing.title()));
        return 1;
    }

    /** What the plan laid and still lies or will lie there, by sowing, so that two who undo at once take turns. */
    private static List<Stay> published(DSLContext tx, UUID plan) {
        return tx
                .select(SEASON_PLAN_STAY.STAY_ID)
                .from(SEASON_PLAN_STAY)
                .where(SEASON_PLAN_STAY.PLAN_ID.eq(plan))
                .fetch(SEASON_PLAN_STAY.STAY_ID)
                .stream()
                .flatMap(id -> StayBookStore.find(tx, id).stream())
                .sorted(java.util.Comparator.comparing(Stay::sowingId))
                .toList();
    }
}
