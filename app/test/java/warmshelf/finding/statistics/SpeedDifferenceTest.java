package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SpeedDifferenceTest {
    @Test
    void four_days_apart_are_found_about_nineteen_times_in_twenty() {
        Random random = new Random(41);
        int held = 0;
        int trials = 120;
        for (int trial = 0; trial < trials; trial++) {
            Arm bag = LogRankTest.drawn("bag", 30, 1, random);
            Arm cells = LogRankTest.drawn("cells", 30, 1.4, random);
            SpeedDifference later =
                    SpeedDifference.between(List.of(cells), List.of(bag)).orElseThrow();
            held += later.interval().holds(4) ? 1 : 0;
        }
        assertThat((double) held / trials).isBetween(0.88, 1.0);
    }

    @Test
    void alike_seed_gives_no_days() {
        List<SproutingTime> times = List.of(
                SproutingTime.between(5, 6),
                SproutingTime.between(6, 7),
                SproutingTime.between(7, 8),
                SproutingTime.between(7, 8),
                SproutingTime.between(8, 9),
                SproutingTime.notBy(9));
        SpeedDifference none = SpeedDifference.between(List.of(new Arm("a", times)), List.of(new Arm("b", times)))
                .orElseThrow();
        assertThat(none.days()).isCloseTo(0, within(1e-9));
        assertThat(none.interval().holds(0)).isTrue();
    }

    @Test
    void a_way_with_one_sprout_has_no_interval() {
        Arm few = new Arm("few", List.of(SproutingTime.between(5, 6), SproutingTime.notBy(9), SproutingTime.notBy(9)));
        assertThat(SpeedDifference.between(List.of(few), List.of(few))).isEmpty();
    }
}
