package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.testing.Decided.done;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStays;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;
import warmshelf.testing.Decided;
import warmshelf.words.Units;

/** From a proposed plan to published stays. */
abstract class PublicationContract extends PublicationRoom {
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
                .containsExactly("Priya", "Tom");
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
                .hasMessageContaining("Priya's Tomato · Harbour Light: ")
                .hasMessageContaining("is taken by Tom's Lantern Row");

        assertThat(stays(first)).isEmpty();
        assertThat(state(first)).isEqualTo(SpaceRequest.State.WAITING);
        assertThat(plans.find(plan).orElseThrow().state()).isEqualTo(KeptPlan.State.PROPOSED);
        assertThat(notes.ofMember(room.tom(), Units.METRIC)).isEmpty();
    }

    @Test
    void on_a_held_rack_no_plan_puts_anything_and_one_made_before_is_not_published() {
        UUID sowing = waiting(room.tomsPeppers(), false);
        UUID plan = proposed(Set.of(), false, List.of(on(sowing, 1, LEFT)));
        PlanDraft before = draft(plan);
        holdTheRack(room.priyasTomatoes());

        assertThatThrownBy(() -> done(publications.publish(plan, 1, before, room.priya())))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("Rack North rack is held since Mon 1 Mar")
                .hasMessageContaining("nothing new is laid on it");

        SeasonQuestion now = questions.question(Set.of(), true, TODAY);
        assertThat(now.held()).containsOnlyKeys("M1", "M2");
        assertThat(now.litPlaces()).isEmpty();
        assertThat(new QuickPlanner().apply(now.question()).placed()).isEmpty();
        assertThat(PlanDraft.of(now, before.plan(), Units.METRIC).clashes())
                .singleElement()
                .asString()
                .contains("Tom's", "Rack North rack is held");
        assertThat(PlanEditForm.places(now, Units.METRIC)).isEmpty();
    }

    @Test
    void what_lies_on_a_held_rack_keeps_no_season_from_being_planned() {
        UUID plan = proposed(Set.of(), false, List.of(on(waiting(room.tomsPeppers(), false), 1, LEFT)));
        done(publications.publish(plan, 1, draft(plan), room.priya()));
        int watts = questions
                .question(Set.of(), true, TODAY)
                .question()
                .circuits()
                .get(0)
                .rating()
                .continuousWatts();
        holdTheRack(room.priyasTomatoes());

        SeasonQuestion now = questions.question(Set.of(), true, TODAY);

        assertThatCode(() -> FixedStays.check(now.question())).doesNotThrowAnyException();
        assertThat(now.question().fixed()).isEmpty();
        assertThat(now.question().circuits().get(0).rating().continuousWatts()).isLessThan(watts);
    }

    private void holdTheRack(UUID sowing) {
        Entry note = new Entry(
                UUID.randomUUID(),
                sowing,
                EntryStep.LOOK,
                TODAY,
                audit().now(),
                null,
                null,
                null,
                false,
                Problem.PESTS,
                "",
                null,
                room.tom(),
                "");
        database().sql().transaction(tx -> {
            stores.entries().add(tx.dsl(), note);
            RackHoldStore.hold(tx.dsl(), note.id(), null, List.of(room.m1Place1()));
        });
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
        assertThat(PlanView.of(draft).lines().get(0).what()).isEqualTo("keeps its place");
        assertThat(PlanView.of(changed).lines().get(0).what())
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

        assertThat(view.lines().get(0).what()).isEqualTo("moves");
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
}
