package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.testing.Decided.done;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

/** A publication taken back: places, warmth and what is offered afterwards. */
abstract class PublicationUndoContract extends PublicationRoom {
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

        assertThat(undone.begun()).containsExactly("Tom's Pepper, sweet and mild hot · Lantern Row");
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
}
