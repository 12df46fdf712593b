package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.decision.Declined;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.Decided;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

/** A room with plans that are written by hand, so that each test says what lies where. */
abstract class PublicationRoom extends StoreContract {
    static final LocalDate TODAY = TestGroup.TODAY;
    static final LocalDate START = LocalDate.of(2027, 3, 10);
    static final Slot LEFT = new Slot(1, 2);
    static final Slot RIGHT = new Slot(3, 2);
    static final String LIT_SHELF = "Hall cellar · North rack · shelf 2";

    GrowRoom room;
    SowingStores stores;
    PlanStore plans;
    PlanNoteStore notes;
    PlanQuestionStore questions;
    PlanPublishStore publications;
    PlanUndoStore undoing;
    FreedSpaceStore freed;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stores = SowingStores.over(database(), audit(), FrostSource.bundledOnly());
        plans = new PlanStore(database(), audit());
        notes = new PlanNoteStore(database(), audit());
        questions = new PlanQuestionStore(stores, new ChoiceRankStore(database(), audit()));
        PlanWarmthStore warmth = new PlanWarmthStore(stores.matDays(), audit());
        freed = new FreedSpaceStore(database(), audit());
        publications = new PlanPublishStore(stores, plans, notes, warmth, freed);
        undoing = new PlanUndoStore(stores, plans, notes, warmth);
    }

    static boolean won(Runnable write) {
        try {
            write.run();
            return true;
        } catch (Declined | Decided.NotDone otherFirst) {
            return false;
        }
    }

    void free(UUID sowing) {
        database()
                .sql()
                .transaction(tx ->
                        stays(sowing).forEach(stay -> stores.stays().end(tx.dsl(), stay, stay.from(), room.priya())));
    }

    void sow(UUID sowing) {
        database().sql().transaction(tx -> {
            stores.entries()
                    .add(
                            tx.dsl(),
                            new warmshelf.sowing.Entry(
                                    UUID.randomUUID(),
                                    sowing,
                                    EntryStep.SOWN,
                                    TODAY,
                                    audit().now(),
                                    null,
                                    null,
                                    null,
                                    false,
                                    null,
                                    "",
                                    null,
                                    room.tom(),
                                    ""));
            stores.sowings().moveTo(tx.dsl(), sowing, SowingStage.SOWN);
        });
    }

    UUID waiting(UUID sowing, boolean underLight) {
        database()
                .sql()
                .transaction(tx -> stores.requests()
                        .add(
                                tx.dsl(),
                                new SpaceRequest(
                                        sowing,
                                        SpaceRequest.State.WAITING,
                                        START.minusDays(5),
                                        START,
                                        START.plusDays(5),
                                        14,
                                        2,
                                        new Band(24, 30),
                                        underLight,
                                        "",
                                        1)));
        return sowing;
    }

    /** A request that an earlier plan placed on M1. */
    UUID published(UUID sowing, int place, Slot slot) {
        waiting(sowing, false);
        publish(proposed(Set.of(), false, List.of(on(sowing, place, slot))));
        return sowing;
    }

    static PlacedStay on(UUID sowing, int place, Slot slot) {
        return new PlacedStay(sowing.toString(), "M1", place, slot, new DayRange(START, START.plusDays(1)), null);
    }

    /** A finished plan of those placements at 26 °C, each as long as it needs there and with the light it asked for. */
    UUID proposed(Set<UUID> freed, boolean withLight, List<PlacedStay> placements, UUID... refused) {
        SeasonQuestion question = questions.question(freed, withLight, TODAY);
        UUID plan = done(plans.begin(question, freed, new PlanStore.Manner(1, 5, withLight), room.priya()));
        List<PlacedStay> placed =
                placements.stream().map(stay -> whole(question, stay)).toList();
        DayRange warm = new DayRange(
                START,
                placed.stream()
                        .map(stay -> stay.days().to())
                        .max(LocalDate::compareTo)
                        .orElse(START.plusDays(1)));
        List<Refused> no = List.of(refused).stream()
                .map(id -> new Refused(
                        id.toString(),
                        new NoPlaceReason.NoMatWarmEnough(new Band(31, 33)),
                        new PlaceChange.JoinWaitingList()))
                .toList();
        plans.finish(
                plan,
                new SeasonPlanner.Found(
                        new SeasonPlan(placed, List.of(new SetPointSpan("M1", warm, 26)), no), 9, false),
                1);
        return plan;
    }

    static PlacedStay whole(SeasonQuestion question, PlacedStay stay) {
        Request wanted = java.util.Objects.requireNonNull(question.asked().get(stay.request()))
                .wanted();
        LocalDate to = START.plusDays(wanted.daysAt(26).orElseThrow());
        PlacedStay.@Nullable LitStay light = wanted.light() == null
                ? null
                : new LightFit(question.question(), List.of())
                        .after("M1", new DayRange(START, to), wanted.light())
                        .orElseThrow();
        return new PlacedStay(stay.request(), stay.mat(), stay.place(), stay.slot(), new DayRange(START, to), light);
    }

    PlanDraft draft(UUID plan) {
        KeptPlan kept = plans.find(plan).orElseThrow();
        PlanDraft draft =
                PlanDraft.of(questions.question(kept.freed(), kept.withLight(), TODAY), kept.plan(), Units.METRIC);
        assertThat(draft.problems()).isEmpty();
        return draft;
    }

    UUID publish(UUID plan) {
        return done(publications.publish(plan, 1, draft(plan), room.priya()));
    }

    void set(LocalDate from, LocalDate afterLast, int celsius) {
        database()
                .sql()
                .transaction(
                        tx -> stores.matDays().setPoint(tx.dsl(), room.m1(), from, afterLast, celsius, room.priya()));
    }

    java.util.Map<LocalDate, Double> setPoints() {
        return database()
                .sql()
                .select(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .where(MAT_DAY.MAT_ID.eq(room.m1()))
                .fetchMap(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS);
    }

    PlaceAndDays spot(int place, Slot slot) {
        return new PlaceAndDays(place == 1 ? room.m1Place1() : room.m1Place2(), slot, START, START.plusDays(3));
    }

    List<Stay> stays(UUID sowing) {
        DSLContext sql = database().sql();
        return StayBookStore.ofSowing(sql, sowing);
    }

    SpaceRequest.State state(UUID sowing) {
        return stores.requests().find(sowing).orElseThrow().state();
    }
}
