package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
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

/** From a proposed plan to published stays and back; the plans are written by hand, so that each test says what lies where. */
abstract class PublicationContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;
    private static final LocalDate START = LocalDate.of(2027, 3, 10);
    private static final Slot LEFT = new Slot(1, 2);
    private static final Slot RIGHT = new Slot(3, 2);
    private static final String LIT_SHELF = "Hall cellar · North rack · shelf 2";

    private GrowRoom room;
    private SowingStores stores;
    private PlanStore plans;
    private PlanNoteStore notes;
    private PlanQuestionStore questions;
    private PlanPublishStore publications;
    private PlanUndoStore undoing;
    private FreedSpaceStore freed;

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

    @Test
    void a_published_plan_lays_what_it_placed_books_the_light_after_it_and_tells_everyone() {
        UUID placed = waiting(room.tomsPeppers(), true);
        UUID refused = waiting(room.priyasTomatoes(), false);
        UUID plan = proposed(Set.of(), true, List.of(on(placed, 1, LEFT)), refused);

        assertThat(publish(plan)).isEqualTo(plan);

        List<Stay> stays = stays(placed);
        assertThat(stays).extracting(Stay::kind).containsExactly("mat", "lit");
        assertThat(stays.get(1).from()).isEqualTo(stays.get(0).to());
        assertThat(stays.get(1).placeId()).isEqualTo(room.lit1());
        assertThat(state(placed)).isEqualTo(SpaceRequest.State.PLACED);
        assertThat(state(refused)).isEqualTo(SpaceRequest.State.WAITING);
        assertThat(notes.ofMember(room.tom(), Units.METRIC).get(0).words())
                .startsWith("Your Pepper, sweet and mild hot · Lantern Row lies on mat M1 Wed 10 Mar to Wed 24 Mar")
                .contains("Then it goes under the light: " + LIT_SHELF + ", place 1, left half");
        assertThat(notes.ofMember(room.priya(), Units.METRIC).get(0).words())
                .isEqualTo(
                        "No place yet for your Tomato · Harbour Light. No mat can be set to 31–33 °C, which it needs."
                                + " Join the waiting list: it is offered the first space that fits.");
        // 31 °C is 87.8 °F, 33 °C is 91.4 °F: by definition of the scales.
        assertThat(notes.ofMember(room.priya(), Units.AMERICAN).get(0).words())
                .contains("set to 88–91 °F, which")
                .doesNotContain("°C");
        assertThat(notes.ofPlan(plan, Units.METRIC))
                .extracting(PlanNoteStore.Told::member)
                .containsExactly("Priya Nair", "Tom Okafor");
    }

    @Test
    void whatever_does_not_fit_any_more_leaves_everything_unpublished() {
        UUID first = waiting(room.tomsPeppers(), false);
        UUID second = waiting(room.priyasTomatoes(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(first, 1, LEFT), on(second, 1, RIGHT)));
        PlanDraft draft = draft(plan);
        UUID other = room.tomsPeppers();
        database()
                .sql()
                .transaction(tx ->
                        stores.stays().layOnMat(tx.dsl(), other, spot(1, RIGHT), 26, new Band(24, 30), room.tom()));

        assertThatThrownBy(() -> done(publications.publish(plan, 1, draft, room.priya())))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("Priya Nair's Tomato · Harbour Light: ")
                .hasMessageContaining("is taken by Tom Okafor's Lantern Row");

        assertThat(stays(first)).isEmpty();
        assertThat(state(first)).isEqualTo(SpaceRequest.State.WAITING);
        assertThat(plans.find(plan).orElseThrow().state()).isEqualTo(KeptPlan.State.PROPOSED);
        assertThat(notes.ofMember(room.tom(), Units.METRIC)).isEmpty();
    }

    @Test
    void what_keeps_its_mat_and_changes_its_light_is_not_announced_as_moved() {
        UUID sowing = waiting(room.tomsPeppers(), true);
        publish(proposed(Set.of(), true, List.of(on(sowing, 1, LEFT))));
        Stay before = stays(sowing).get(0);
        UUID plan = proposed(Set.of(before.id()), true, List.of(on(sowing, 1, LEFT)));
        PlanDraft draft = draft(plan);
        PlacedStay same = draft.plan().placed().get(0);
        PlacedStay.LitStay light = java.util.Objects.requireNonNull(same.light());
        PlacedStay otherLight = new PlacedStay(
                same.request(),
                same.mat(),
                same.place(),
                same.slot(),
                same.days(),
                new PlacedStay.LitStay(light.shelf(), 2, light.slot(), light.days()));
        PlanDraft changed = draft.with(otherLight, 26);
        assertThat(PlanView.of(draft).members().get(0).lines().get(0).what()).isEqualTo("keeps its place");
        assertThat(PlanView.of(changed).members().get(0).lines().get(0).what())
                .isEqualTo("keeps its mat and gets another place under the light");

        assertThat(done(publications.publish(plan, 1, changed, room.priya()))).isEqualTo(plan);

        assertThat(stays(sowing).get(0).placeId()).isEqualTo(before.placeId());
        assertThat(stays(sowing).get(1).placeId()).isEqualTo(room.lit2());
        assertThat(notes.ofMember(room.tom(), Units.METRIC).get(0).words())
                .doesNotContain("moved")
                .contains("It stays on its mat; only its place under the light is another.");
    }

    @Test
    void what_a_plan_lays_where_it_lies_already_is_told_nothing() {
        UUID sowing = published(room.tomsPeppers(), 1, LEFT);
        notes.dismiss(notes.ofMember(room.tom(), Units.METRIC).get(0).id(), room.tom());
        Stay before = stays(sowing).get(0);

        publish(proposed(Set.of(before.id()), false, List.of(on(sowing, 1, LEFT))));

        assertThat(stays(sowing)).containsExactly(before);
        assertThat(notes.ofMember(room.tom(), Units.METRIC)).isEmpty();
    }

    @Test
    void places_are_told_apart_although_their_names_end_alike() {
        database()
                .sql()
                .update(MAT)
                .set(MAT.NAME, "Old mat M1")
                .where(MAT.ID.eq(room.m2()))
                .execute();
        UUID sowing = waiting(room.tomsPeppers(), false);
        Band cool = new Band(20, 22);
        database()
                .sql()
                .update(SPACE_REQUEST)
                .set(SPACE_REQUEST.LOW_C, cool.lowC())
                .set(SPACE_REQUEST.HIGH_C, cool.highC())
                .execute();
        UUID stay = database().sql().transactionResult(tx -> {
            SpaceRequest request = stores.requests().find(tx.dsl(), sowing).orElseThrow();
            stores.requests().decide(tx.dsl(), request, SpaceRequest.State.PLACED, "", room.priya());
            PlaceAndDays spot = new PlaceAndDays(room.m2Place1(), LEFT, START, START.plusDays(9));
            return stores.stays().layOnMat(tx.dsl(), sowing, spot, 21, cool, room.priya());
        });
        SeasonQuestion question = questions.question(Set.of(stay), false, TODAY);
        PlacedStay toOtherMat =
                new PlacedStay(sowing.toString(), "M1", 1, LEFT, new DayRange(START, START.plusDays(9)), null);

        PlanView view = PlanView.of(
                PlanDraft.of(question, new SeasonPlan(List.of(toOtherMat), List.of(), List.of()), Units.METRIC));

        assertThat(view.members().get(0).lines().get(0).what()).isEqualTo("moves");
    }

    @Test
    void an_undone_publication_puts_back_what_it_moved_and_lets_the_rest_wait() {
        UUID moved = published(room.tomsPeppers(), 1, LEFT);
        Stay before = stays(moved).get(0);
        UUID fresh = waiting(room.priyasTomatoes(), false);
        UUID plan = proposed(Set.of(before.id()), false, List.of(on(moved, 2, RIGHT), on(fresh, 1, LEFT)));
        publish(plan);
        assertThat(stays(moved).get(0).placeId()).isEqualTo(room.m1Place2());

        PlanUndoStore.Undone undone = done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(undone.restored()).isEqualTo(1);
        assertThat(undone.waiting()).isEqualTo(1);
        Stay back = stays(moved).get(0);
        assertThat(List.of(back.placeId(), back.slot(), back.from(), back.to()))
                .isEqualTo(List.of(before.placeId(), before.slot(), before.from(), before.to()));
        assertThat(state(moved)).isEqualTo(SpaceRequest.State.PLACED);
        assertThat(stays(fresh)).isEmpty();
        assertThat(state(fresh)).isEqualTo(SpaceRequest.State.WAITING);
        assertThat(notes.ofMember(room.tom(), Units.METRIC).get(0).words())
                .contains("lies where it lay before: Hall cellar");
        assertThat(undoing.undo(plan, TODAY, room.priya()).refusal()).contains(new PlanRefusal.NothingToUndo());
    }

    @Test
    void what_lost_its_place_gets_it_back_by_an_undo_with_its_light() {
        UUID first = waiting(room.tomsPeppers(), true);
        publish(proposed(Set.of(), true, List.of(on(first, 1, LEFT))));
        List<Stay> before = stays(first);
        UUID plan = proposed(Set.of(before.get(0).id()), true, List.of(), first);
        publish(plan);
        assertThat(stays(first)).isEmpty();
        assertThat(database().sql().fetchCount(QUARTER_DAY)).isZero();

        done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(stays(first))
                .extracting(Stay::placeId, Stay::from, Stay::to)
                .containsExactlyElementsOf(before.stream()
                        .map(stay -> org.assertj.core.groups.Tuple.tuple(stay.placeId(), stay.from(), stay.to()))
                        .toList());
    }

    @Test
    void room_that_somebody_took_meanwhile_is_not_taken_from_them_by_an_undo() {
        UUID moved = published(room.tomsPeppers(), 1, LEFT);
        UUID plan = proposed(Set.of(stays(moved).get(0).id()), false, List.of(on(moved, 2, RIGHT)));
        publish(plan);
        UUID counter = published(room.priyasTomatoes(), 1, LEFT);

        PlanUndoStore.Undone undone = done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(undone.restored()).isZero();
        assertThat(undone.waiting()).isEqualTo(1);
        assertThat(stays(moved)).isEmpty();
        assertThat(state(moved)).isEqualTo(SpaceRequest.State.WAITING);
        assertThat(stays(counter)).hasSize(1);
    }

    @Test
    void what_has_begun_stays_and_is_named() {
        UUID begun = waiting(room.tomsPeppers(), false);
        UUID other = waiting(room.priyasTomatoes(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(begun, 1, LEFT), on(other, 2, LEFT)));
        publish(plan);
        sow(begun);

        PlanUndoStore.Undone undone = done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(undone.begun()).containsExactly("Tom Okafor's Pepper, sweet and mild hot · Lantern Row");
        assertThat(stays(begun)).hasSize(1);
        assertThat(stays(other)).isEmpty();
    }

    @Test
    void a_place_given_by_hand_after_the_publication_is_not_taken_back() {
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        publish(plan);
        database().sql().transaction(tx -> {
            stores.stays().end(tx.dsl(), stays(sowing).get(0), START, room.priya());
            stores.stays().layOnMat(tx.dsl(), sowing, spot(2, LEFT), 26, new Band(24, 30), room.priya());
        });

        assertThat(undoing.undo(plan, TODAY, room.priya()).refusal()).contains(new PlanRefusal.NothingToUndo());
        assertThat(stays(sowing)).hasSize(1);
    }

    @Test
    void an_undone_publication_leaves_no_mat_warm_for_nothing() {
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        publish(plan);
        assertThat(setPoints()).isNotEmpty().containsValue(26.0);

        PlanUndoStore.Undone undone = done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(setPoints()).isEmpty();
        assertThat(undone.matsKept()).isEmpty();
    }

    // 79 °F is 26.1 °C, to a tenth, by definition of the scales; the plan says 26.
    @Test
    void a_plan_lays_beside_what_lies_at_a_whole_degree_fahrenheit_without_turning_the_mat() {
        UUID fixed = room.priyasTomatoes();
        database()
                .sql()
                .transaction(tx ->
                        stores.stays().layOnMat(tx.dsl(), fixed, spot(1, RIGHT), 26.1, new Band(24, 30), room.priya()));
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));

        assertThat(draft(plan).plan().setPoints())
                .extracting(SetPointSpan::celsius)
                .containsOnly(26.1);
        assertThat(publish(plan)).isEqualTo(plan);

        assertThat(setPoints()).hasSizeGreaterThan(5);
        assertThat(setPoints().values()).containsOnly(26.1);
        done(undoing.undo(plan, TODAY, room.priya()));
        assertThat(setPoints()).hasSize(3).containsEntry(START, 26.1);
    }

    @Test
    void an_undone_publication_turns_a_mat_back_to_what_it_was_set_to() {
        set(START.plusDays(1), START.plusDays(3), 22);
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        publish(plan);
        assertThat(setPoints()).containsEntry(START.plusDays(2), 26.0);

        done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(setPoints())
                .containsOnly(
                        java.util.Map.entry(START.plusDays(1), 22.0), java.util.Map.entry(START.plusDays(2), 22.0));
    }

    @Test
    void what_somebody_has_set_since_stays_set_when_a_publication_is_undone() {
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        publish(plan);
        set(START, START.plusDays(2), 27);

        PlanUndoStore.Undone undone = done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(setPoints())
                .containsOnly(java.util.Map.entry(START, 27.0), java.util.Map.entry(START.plusDays(1), 27.0));
        assertThat(undone.matsKept()).containsExactly("M1");
    }

    @Test
    void what_was_turned_by_hand_before_a_publication_is_again_after_its_undo() {
        set(START.plusDays(1), START.plusDays(3), 22);
        set(START.plusDays(5), START.plusDays(6), 26);
        database().sql().update(MAT_DAY).set(MAT_DAY.BY_HAND, true).execute();
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        publish(plan);

        PlanUndoStore.Undone undone = done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(undone.matsKept()).isEmpty();
        assertThat(database().sql().fetchCount(MAT_DAY, MAT_DAY.BY_HAND.isTrue()))
                .isEqualTo(3);
        assertThat(setPoints())
                .containsOnly(
                        java.util.Map.entry(START.plusDays(1), 22.0),
                        java.util.Map.entry(START.plusDays(2), 22.0),
                        java.util.Map.entry(START.plusDays(5), 26.0));
    }

    @Test
    void what_was_laid_on_a_mat_since_keeps_its_warmth_when_a_publication_is_undone() {
        set(START, START.plusDays(10), 25);
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        publish(plan);
        UUID other = room.priyasTomatoes();
        database()
                .sql()
                .transaction(tx ->
                        stores.stays().layOnMat(tx.dsl(), other, spot(1, RIGHT), 26, new Band(24, 30), room.tom()));

        PlanUndoStore.Undone undone = done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(stays(other)).hasSize(1);
        assertThat(setPoints())
                .containsEntry(START, 26.0)
                .containsEntry(START.plusDays(2), 26.0)
                .containsEntry(START.plusDays(3), 25.0)
                .doesNotContainKey(START.plusDays(10));
        assertThat(undone.matsKept()).containsExactly("M1");
    }

    @Test
    void what_lay_there_before_lies_at_its_former_set_point_again() {
        set(START, START.plusDays(60), 25);
        UUID before = waiting(room.tomsPeppers(), false);
        PlaceAndDays spot = spot(1, RIGHT);
        database()
                .sql()
                .transaction(tx -> stores.stays().layAsSet(tx.dsl(), before, spot, new Band(24, 30), room.tom()));
        UUID fresh = waiting(room.priyasTomatoes(), false);
        clock.set(TestGroup.MORNING.plusSeconds(60));
        UUID plan = proposed(Set.of(), false, List.of(on(fresh, 1, LEFT)), before);
        done(publications.publish(
                plan,
                1,
                PlanDraft.of(
                        questions.question(Set.of(), false, TODAY),
                        plans.find(plan).orElseThrow().plan(),
                        Units.METRIC),
                room.priya()));
        assertThat(setPoints()).containsEntry(START, 26.0);

        done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(setPoints()).containsEntry(START, 25.0).containsEntry(START.plusDays(59), 25.0);
        assertThat(stays(before)).hasSize(1);
    }

    @Test
    void places_that_come_free_by_an_undo_are_offered_to_nobody_until_the_coordinator_says_so() {
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        publish(plan);

        done(undoing.undo(plan, TODAY, room.priya()));

        assertThat(freed.reachingBeyond(TODAY)).isEmpty();
        assertThat(freed.heldBeyond(TODAY)).containsExactly(new FreedSpaceStore.HeldBack(plan, 1));

        freed.offer(plan, room.priya());

        assertThat(freed.reachingBeyond(TODAY))
                .extracting(FreedSpaceStore.Freed::placeId, FreedSpaceStore.Freed::from)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(room.m1Place1(), START));
        assertThat(freed.heldBeyond(TODAY)).isEmpty();
    }

    @Test
    void places_held_back_by_an_undo_are_on_offer_again_once_another_plan_is_published() {
        UUID first = waiting(room.tomsPeppers(), false);
        UUID second = waiting(room.priyasTomatoes(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(first, 1, LEFT), on(second, 1, RIGHT)));
        publish(plan);
        done(undoing.undo(plan, TODAY, room.priya()));

        publish(proposed(Set.of(), false, List.of(on(first, 1, LEFT)), second));

        assertThat(freed.heldBeyond(TODAY)).isEmpty();
        assertThat(freed.reachingBeyond(TODAY)).hasSize(2);
    }

    @Test
    void a_plan_published_and_space_given_away_at_once_never_share_a_quarter() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 25; round++) {
                UUID planned = waiting(room.tomsPeppers(), false);
                UUID counter = room.priyasTomatoes();
                UUID plan = proposed(Set.of(), false, List.of(on(planned, 1, LEFT)));
                PlanDraft draft = draft(plan);
                CyclicBarrier together = new CyclicBarrier(2);
                Callable<Boolean> publish = () -> {
                    together.await();
                    return won(() -> done(publications.publish(plan, 1, draft, room.priya())));
                };
                Callable<Boolean> place = () -> {
                    together.await();
                    return won(() -> database()
                            .sql()
                            .transaction(tx -> stores.stays()
                                    .layOnMat(tx.dsl(), counter, spot(1, LEFT), 26, new Band(24, 30), room.tom())));
                };

                int winners = 0;
                for (Future<Boolean> done : both.invokeAll(List.of(publish, place))) {
                    winners += done.get() ? 1 : 0;
                }

                assertThat(winners).isEqualTo(1);
                assertThat(stays(planned).size() + stays(counter).size()).isEqualTo(1);
                assertThat(state(planned) == SpaceRequest.State.PLACED)
                        .isEqualTo(stays(planned).size() == 1);
                free(planned);
                free(counter);
            }
        } finally {
            both.shutdownNow();
        }
    }

    private static boolean won(Runnable write) {
        try {
            write.run();
            return true;
        } catch (Declined | Decided.NotDone otherFirst) {
            return false;
        }
    }

    private void free(UUID sowing) {
        database()
                .sql()
                .transaction(tx ->
                        stays(sowing).forEach(stay -> stores.stays().end(tx.dsl(), stay, stay.from(), room.priya())));
    }

    private void sow(UUID sowing) {
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

    private UUID waiting(UUID sowing, boolean underLight) {
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
    private UUID published(UUID sowing, int place, Slot slot) {
        waiting(sowing, false);
        publish(proposed(Set.of(), false, List.of(on(sowing, place, slot))));
        return sowing;
    }

    private static PlacedStay on(UUID sowing, int place, Slot slot) {
        return new PlacedStay(sowing.toString(), "M1", place, slot, new DayRange(START, START.plusDays(1)), null);
    }

    /** A finished plan of those placements at 26 °C, each as long as it needs there and with the light it asked for. */
    private UUID proposed(Set<UUID> freed, boolean withLight, List<PlacedStay> placements, UUID... refused) {
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

    private static PlacedStay whole(SeasonQuestion question, PlacedStay stay) {
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

    private PlanDraft draft(UUID plan) {
        KeptPlan kept = plans.find(plan).orElseThrow();
        PlanDraft draft =
                PlanDraft.of(questions.question(kept.freed(), kept.withLight(), TODAY), kept.plan(), Units.METRIC);
        assertThat(draft.problems()).isEmpty();
        return draft;
    }

    private UUID publish(UUID plan) {
        return done(publications.publish(plan, 1, draft(plan), room.priya()));
    }

    private void set(LocalDate from, LocalDate afterLast, int celsius) {
        database()
                .sql()
                .transaction(
                        tx -> stores.matDays().setPoint(tx.dsl(), room.m1(), from, afterLast, celsius, room.priya()));
    }

    private java.util.Map<LocalDate, Double> setPoints() {
        return database()
                .sql()
                .select(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .where(MAT_DAY.MAT_ID.eq(room.m1()))
                .fetchMap(MAT_DAY.ON_DAY, MAT_DAY.CELSIUS);
    }

    private PlaceAndDays spot(int place, Slot slot) {
        return new PlaceAndDays(place == 1 ? room.m1Place1() : room.m1Place2(), slot, START, START.plusDays(3));
    }

    private List<Stay> stays(UUID sowing) {
        DSLContext sql = database().sql();
        return StayBookStore.ofSowing(sql, sowing);
    }

    private SpaceRequest.State state(UUID sowing) {
        return stores.requests().find(sowing).orElseThrow().state();
    }
}
