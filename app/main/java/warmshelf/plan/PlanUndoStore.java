package warmshelf.plan;

import static warmshelf.db.generated.Tables.SEASON_PLAN_BEFORE;
import static warmshelf.db.generated.Tables.SEASON_PLAN_STAY;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.STAY_MOVE;
import static warmshelf.plan.PlanSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;
import warmshelf.words.DayWords;

/**
 * Takes a publication back: what it laid and has not begun comes off, the mats are turned back, and what lay elsewhere before
 * lies there again, where that room is still free. The rest waits, and the room that came free is offered to nobody until a
 * coordinator says so or another plan is published.
 */
final class PlanUndoStore {
    private final SowingStores stores;
    private final PlanStore plans;
    private final PlanNoteStore notes;
    private final PlanWarmthStore warmth;

    PlanUndoStore(SowingStores stores, PlanStore plans, PlanNoteStore notes, PlanWarmthStore warmth) {
        this.stores = stores;
        this.plans = plans;
        this.notes = notes;
        this.warmth = warmth;
    }

    /**
     * What an undo did.
     *
     * @param restored how many lie where they lay before
     * @param waiting how many wait for a place
     * @param begun what has begun and therefore stays
     * @param matsKept mats that keep a set-point of the plan, or one of somebody's since, on some day
     */
    record Undone(int restored, int waiting, List<String> begun, List<String> matsKept) {}

    /** Takes a publication back, unless it is not published, or everything of it has begun or gone. */
    Decision<Undone> undo(UUID plan, LocalDate today, UUID by) {
        return Decision.of(() ->
                stores.database().sql().transactionResult(inside -> new Undoing(inside.dsl(), plan, today, by).undo()));
    }

    private final class Undoing {
        private final DSLContext tx;
        private final UUID plan;
        private final LocalDate today;
        private final UUID by;
        private final Map<UUID, Sowing> open = new TreeMap<>();
        private final List<String> begun = new ArrayList<>();
        private final Set<UUID> restored = new HashSet<>();

        Undoing(DSLContext tx, UUID plan, LocalDate today, UUID by) {
            this.tx = tx;
            this.plan = plan;
            this.today = today;
            this.by = by;
        }

        Undone undo() {
            Map<UUID, List<Record>> before = before();
            Set<UUID> laid = laid();
            // In one order, so that two who undo at once take turns.
            Set<UUID> touched = new java.util.TreeSet<>(before.keySet());
            touched.addAll(sowingsOf(laid));
            touched.forEach(sowing -> look(sowing, laid));
            if (open.isEmpty()) {
                throw Declined.overtaken(new PlanRefusal.NothingToUndo());
            }
            plans.undo(tx, plan, by);
            open.keySet().forEach(sowing -> takeOff(sowing, laid));
            List<String> matsKept = warmth.turnBack(tx, plan, today, by);
            before.forEach(this::restore);
            open.values().forEach(this::tell);
            int waiting = open.size() - restored.size();
            stores.audit()
                    .write(
                            tx,
                            by,
                            "undo plan",
                            "plan",
                            plan,
                            "%d as before, %d wait again".formatted(restored.size(), waiting));
            return new Undone(restored.size(), waiting, begun, matsKept);
        }

        /** Where stays lay that the publication moved or took away, by sowing, those on mats first. */
        private Map<UUID, List<Record>> before() {
            return tx
                    .select(SEASON_PLAN_BEFORE.asterisk(), STAY.SOWING_ID)
                    .from(SEASON_PLAN_BEFORE)
                    .join(STAY)
                    .on(STAY.ID.eq(SEASON_PLAN_BEFORE.STAY_ID))
                    .where(SEASON_PLAN_BEFORE.PLAN_ID.eq(plan))
                    .orderBy(SEASON_PLAN_BEFORE.FROM_DAY, SEASON_PLAN_BEFORE.STAY_ID)
                    .fetch()
                    .stream()
                    .collect(Collectors.groupingBy(row -> row.get(STAY.SOWING_ID), TreeMap::new, Collectors.toList()));
        }

        /** What the plan laid, and where a coordinator carried it since. */
        private Set<UUID> laid() {
            Set<UUID> laid = new HashSet<>(tx.select(SEASON_PLAN_STAY.STAY_ID)
                    .from(SEASON_PLAN_STAY)
                    .where(SEASON_PLAN_STAY.PLAN_ID.eq(plan))
                    .fetch(SEASON_PLAN_STAY.STAY_ID));
            tx.select(STAY_MOVE.STAY_ID, STAY_MOVE.NEW_STAY_ID)
                    .from(STAY_MOVE)
                    .orderBy(STAY_MOVE.KEPT_ORDER)
                    .forEach(move -> {
                        if (laid.contains(move.value1())) {
                            laid.add(move.value2());
                        }
                    });
            return laid;
        }

        private Set<UUID> sowingsOf(Set<UUID> stays) {
            return laidStays(stays).stream().map(Stay::sowingId).collect(Collectors.toSet());
        }

        private List<Stay> laidStays(Set<UUID> stays) {
            return stays.stream()
                    .flatMap(stay -> StayBookStore.find(tx, stay).stream())
                    .toList();
        }

        /** Holds a sowing and finds out whether anything of it can be taken back. */
        private void look(UUID id, Set<UUID> laid) {
            Optional<Sowing> held = stores.sowings().findAndHold(tx, id);
            if (held.isEmpty() || held.get().stage().isOver()) {
                return;
            }
            Sowing sowing = held.get();
            List<Stay> lying = StayBookStore.ofSowing(tx, id);
            boolean hasBegun = lying.stream().anyMatch(stay -> stay.isBegunBy(today))
                    || !sowing.stage().isBeforeSowing();
            if (hasBegun) {
                begun.add("%s's %s".formatted(sowing.grower().name(), sowing.title()));
            } else if (lying.stream().allMatch(stay -> laid.contains(stay.id()))) {
                // What somebody has given a place by hand since then keeps it.
                open.put(id, sowing);
            }
        }

        private void takeOff(UUID sowing, Set<UUID> laid) {
            for (Stay stay : StayBookStore.ofSowing(tx, sowing)) {
                if (laid.contains(stay.id())) {
                    stores.stays().callOff(tx, stay, plan, by);
                }
            }
            request(sowing, SpaceRequest.State.PLACED)
                    .ifPresent(request -> decide(request, SpaceRequest.State.WAITING));
        }

        private void decide(SpaceRequest request, SpaceRequest.State state) {
            stores.requests().decide(tx, request, state, "", by).orDecline();
        }

        private Optional<SpaceRequest> request(UUID sowing, SpaceRequest.State state) {
            return stores.requests().find(tx, sowing).filter(found -> found.state() == state);
        }

        private void restore(UUID sowing, List<Record> before) {
            Optional<SpaceRequest> request = request(sowing, SpaceRequest.State.WAITING);
            if (!open.containsKey(sowing) || request.isEmpty()) {
                return;
            }
            for (Record was : before) {
                boolean onMat = was.get(SEASON_PLAN_BEFORE.CELSIUS) != null;
                if (was.get(SEASON_PLAN_BEFORE.FROM_DAY).isBefore(today)
                        || (!onMat && !restored.contains(sowing))
                        || !layAgain(sowing, request.get(), was)) {
                    continue;
                }
                if (restored.add(sowing)) {
                    decide(request.get(), SpaceRequest.State.PLACED);
                }
            }
        }

        /** Whether it lies there again; somebody else may have the room by now. */
        private boolean layAgain(UUID sowing, SpaceRequest request, Record was) {
            PlaceAndDays spot = new PlaceAndDays(
                    was.get(SEASON_PLAN_BEFORE.PLACE_ID),
                    new Slot(was.get(SEASON_PLAN_BEFORE.FIRST_QUARTER), was.get(SEASON_PLAN_BEFORE.QUARTERS)),
                    was.get(SEASON_PLAN_BEFORE.FROM_DAY),
                    was.get(SEASON_PLAN_BEFORE.TO_DAY));
            boolean onMat = was.get(SEASON_PLAN_BEFORE.CELSIUS) != null;
            try {
                tx.transaction(inside -> {
                    if (onMat) {
                        stores.stays().layAsSet(inside.dsl(), sowing, spot, request.band(), by);
                    } else {
                        stores.stays().layUnderLight(inside.dsl(), sowing, spot, by);
                    }
                });
                return true;
            } catch (Declined taken) {
                return false;
            }
        }

        private void tell(Sowing sowing) {
            String words = restored.contains(sowing.id())
                    ? SAY.takenBackLies(sowing.title(), where(sowing.id()))
                    : SAY.takenBackWaits(sowing.title());
            notes.tell(
                    tx,
                    plan,
                    sowing.grower().memberId(),
                    sowing.id(),
                    restored.contains(sowing.id()),
                    PlanNews.of(words));
        }

        private String where(UUID sowing) {
            return StayBookStore.ofSowing(tx, sowing).stream()
                    .filter(Stay::isOnMat)
                    .map(stay -> "%s, from %s".formatted(stay.where(), DayWords.day(stay.from())))
                    .collect(Collectors.joining("; "));
        }
    }
}
