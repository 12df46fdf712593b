package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;
import warmshelf.words.Units;

/** Slow seed and its place. */
abstract class SlowSeedContract extends TickContract {
    @Test
    void slow_seed_keeps_its_place_three_days_longer_when_nobody_waits_for_it() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(1));

        TickOutcome.Kept outcome = (TickOutcome.Kept) keep(sowing, look(0));

        assertThat(outcome.stage()).isEqualTo(SowingStage.SOWN);
        assertThat(outcome.remark(Units.METRIC))
                .isEqualTo("Its place was to be free tomorrow; it keeps it to Thu 4 Mar.");
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(4));
        assertThat(takenOn(TODAY.plusDays(3))).isEqualTo(2);
    }

    @Test
    void slow_seed_whose_place_is_promised_is_told_to_whom() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(1));
        layOnMat(room.priyasTomatoes(), room.m1Place1(), TODAY.plusDays(2), TODAY.plusDays(9));

        TickOutcome.Kept outcome = (TickOutcome.Kept) keep(sowing, look(0));

        assertThat(outcome.remark(Units.METRIC))
                .isEqualTo("Its place is promised from tomorrow on: Place 1 on mat M1 is taken by Priya's Harbour"
                        + " Light (Tomato), Wed 3 Mar to Tue 9 Mar. Please tell a coordinator.");
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(1));
        assertThat(entries.ofSowing(database().sql(), sowing))
                .as("the look is kept")
                .hasSize(2);
    }

    @Test
    void a_place_that_ran_out_while_nobody_looked_is_taken_back_for_slow_seed() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.minusDays(2));

        TickOutcome.Kept outcome = (TickOutcome.Kept) keep(sowing, look(0));

        assertThat(outcome.remark(Units.METRIC))
                .isEqualTo("Its place had been free since Sat 27 Feb; it keeps it to Thu 4 Mar.");
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(4));
        assertThat(takenOn(TODAY.minusDays(1))).isEqualTo(2);
    }

    @Test
    void what_was_taken_off_the_heat_is_not_put_back_on_it() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));
        keep(sowing, step(EntryStep.OFF_HEAT));

        keep(sowing, look(4));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY);
    }

    @Test
    void a_bag_whose_cells_went_home_gets_no_place_back() {
        UUID bag = sown(room.tomsBag());
        layOnMat(bag, new PlaceAndDays(room.m1Place1(), new Slot(2, 1), TODAY.minusDays(10), TODAY.plusDays(5)));
        keep(bag, look(6));
        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(6).done());
        keep(bag, look(0));
        keep(bag, look(3));

        assertThat(stays(bag)).extracting(Stay::to).containsExactly(TODAY);
    }

    @Test
    void seed_whose_place_is_kept_for_days_to_come_is_not_extended() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(2));

        keep(sowing, look(0));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(2));
    }
}
