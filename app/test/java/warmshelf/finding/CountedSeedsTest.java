package warmshelf.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import warmshelf.crop.Method;
import warmshelf.finding.statistics.SproutingTime;

class CountedSeedsTest {
    private final SownAndSeen seen = new SownAndSeen();

    @Test
    void each_seed_came_between_two_counts() {
        seen.look(7, 0).look(8, null).look(9, 2).look(12, 3);

        CountedSeeds counted = CountedSeeds.up(Method.CELLS, 5, seen.progress(Method.CELLS, 5));

        assertThat(counted.times())
                .containsExactly(
                        SproutingTime.between(7, 9),
                        SproutingTime.between(7, 9),
                        SproutingTime.between(9, 12),
                        SproutingTime.notBy(12),
                        SproutingTime.notBy(12));
        assertThat(counted.troubles()).isEmpty();
        assertThat(counted.came()).isEqualTo(3);
    }

    @Test
    void seeds_of_a_bag_are_roots_first_and_seedlings_once_moved() {
        seen.look(5, 2)
                .moved(6, 2, false)
                .look(7, 4)
                .moved(8, 4, true)
                .look(11, 3)
                .look(12, 4);

        assertThat(CountedSeeds.roots(6, seen.progress(Method.BAG, 6)).times())
                .startsWith(SproutingTime.between(0, 5), SproutingTime.between(0, 5), SproutingTime.between(5, 7));
        assertThat(CountedSeeds.up(Method.BAG, 6, seen.progress(Method.BAG, 6)).times())
                .as("none can be up before the first was moved")
                .containsExactly(
                        SproutingTime.between(6, 11),
                        SproutingTime.between(6, 11),
                        SproutingTime.between(6, 11),
                        SproutingTime.between(11, 12),
                        SproutingTime.notBy(12),
                        SproutingTime.notBy(12));
    }

    @Test
    void seedlings_that_nobody_counted_give_no_curve() {
        seen.look(8, null);

        CountedSeeds counted = CountedSeeds.up(Method.CELLS, 5, seen.progress(Method.CELLS, 5));

        assertThat(counted.given()).isFalse();
        assertThat(counted.troubles()).containsExactly(CountTrouble.NOT_COUNTED);
    }

    @Test
    void counts_that_fall_or_exceed_what_was_sown_are_withheld() {
        seen.look(8, 4).look(9, 3);
        assertThat(CountedSeeds.up(Method.CELLS, 5, seen.progress(Method.CELLS, 5))
                        .troubles())
                .containsExactly(CountTrouble.FELL);
        assertThat(CountedSeeds.up(Method.CELLS, 3, seen.progress(Method.CELLS, 3)))
                .satisfies(counted -> assertThat(counted.troubles()).containsExactly(CountTrouble.MORE_THAN_SOWN))
                .satisfies(counted -> assertThat(counted.given()).isFalse());
    }

    @Test
    void weeks_without_a_look_are_said_and_do_not_withhold() {
        seen.look(7, 0).look(22, 5);

        CountedSeeds counted = CountedSeeds.up(Method.CELLS, 5, seen.progress(Method.CELLS, 5));

        assertThat(counted.troubles()).containsExactly(CountTrouble.WEEKS_BETWEEN);
        assertThat(counted.given()).isTrue();
    }

    @Test
    void two_counts_on_one_day_are_one_look() {
        seen.look(8, 1).look(8, 4);

        assertThat(CountedSeeds.up(Method.CELLS, 4, seen.progress(Method.CELLS, 4))
                        .times())
                .containsExactly(
                        SproutingTime.between(0, 8),
                        SproutingTime.between(7, 8),
                        SproutingTime.between(7, 8),
                        SproutingTime.between(7, 8));
    }
}
