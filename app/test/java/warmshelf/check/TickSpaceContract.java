package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;

/** What ticks do to places. */
abstract class TickSpaceContract extends TickContract {
    @Test
    void moving_to_light_ends_the_stay_on_the_mat_that_day_and_takes_the_place_under_the_light() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        TickOutcome outcome = keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));

        assertThat(outcome).isEqualTo(new TickOutcome.Kept(SowingStage.UNDER_LIGHT, false, List.of()));
        assertThat(stays(sowing))
                .extracting(Stay::kind, Stay::from, Stay::to)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("mat", TODAY.minusDays(10), TODAY),
                        org.assertj.core.groups.Tuple.tuple("lit", TODAY, LIGHT_UNTIL));
        assertThat(database()
                        .sql()
                        .fetchCount(QUARTER_DAY, QUARTER_DAY.KIND.eq("mat").and(QUARTER_DAY.ON_DAY.ge(TODAY))))
                .isZero();
    }

    @Test
    void going_home_ends_the_stay_and_takes_no_other_place() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        keep(sowing, step(EntryStep.UNDER_LIGHT));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY);
    }

    @Test
    void a_clash_under_the_light_refuses_the_whole_tick_and_keeps_nothing() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));
        UUID other = sown(room.priyasTomatoes());
        keep(other, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));

        String outcome = no(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));

        assertThat(outcome)
                .isEqualTo("Overtaken: Place 1 under the light is taken by Priya's Harbour Light (Tomato)"
                        + ", Mon 1 Mar to Fri 30 Apr.");
        assertThat(stage(sowing)).isEqualTo(SowingStage.SOWN);
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(1);
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(5));
    }

    @Test
    void a_place_that_is_under_no_light_is_refused() {
        UUID sowing = sown(room.tomsPeppers());

        assertThat(no(sowing, step(EntryStep.UNDER_LIGHT).to(room.m1Place1(), LEFT)))
                .isEqualTo("Overtaken: There is no such place under a light; please choose one from the list.");
    }

    @Test
    void a_look_never_gives_a_place_away() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        keep(sowing, look(3).to(room.lit1(), LEFT));

        assertThat(stays(sowing))
                .extracting(Stay::kind, Stay::to)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("mat", TODAY.plusDays(5)));
    }

    @Test
    void a_bag_moved_in_part_stays_on_the_mat_while_its_cells_lie_under_the_light() {
        UUID bag = sown(room.tomsBag());
        layOnMat(bag, new PlaceAndDays(room.m1Place1(), new Slot(2, 1), TODAY.minusDays(10), TODAY.plusDays(5)));
        keep(bag, look(6));

        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(4).to(room.lit1(), LEFT));
        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(6).to(room.lit2(), LEFT));

        assertThat(stage(bag)).isEqualTo(SowingStage.SPROUTING);
        assertThat(stays(bag))
                .extracting(Stay::kind, Stay::placeId, Stay::to)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("mat", room.m1Place1(), TODAY.plusDays(5)),
                        org.assertj.core.groups.Tuple.tuple("lit", room.lit1(), LIGHT_UNTIL));

        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(6).done());

        assertThat(stage(bag)).isEqualTo(SowingStage.IN_CELLS);
        assertThat(stays(bag))
                .extracting(Stay::kind, Stay::to)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("mat", TODAY),
                        org.assertj.core.groups.Tuple.tuple("lit", LIGHT_UNTIL));
    }

    @Test
    void hardening_off_frees_the_place_under_the_light() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));
        clock.advance(Duration.ofDays(40));

        keep(sowing, step(EntryStep.HARDENING_OFF).on(TODAY.plusDays(40)));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(40));
        assertThat(takenOn(TODAY.plusDays(39))).isEqualTo(2);
        assertThat(takenOn(TODAY.plusDays(40))).isZero();
    }

    @Test
    void giving_up_frees_the_place_on_the_mat() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        keep(sowing, step(EntryStep.GAVE_UP));

        assertThat(takenOn(TODAY)).isZero();
        assertThat(takenOn(TODAY.minusDays(1))).isEqualTo(2);
    }
}
