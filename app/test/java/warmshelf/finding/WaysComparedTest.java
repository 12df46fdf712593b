package warmshelf.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.stat.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.SproutingTime;

class WaysComparedTest {
    private static Arm arm(String name, int day, int came, int seeds) {
        List<SproutingTime> times = new ArrayList<>();
        for (int i = 0; i < came; i++) {
            int by = day + i % 3;
            times.add(SproutingTime.between(by - 1, by));
        }
        times.addAll(Collections.nCopies(seeds - came, SproutingTime.notBy(30)));
        return new Arm(name, times);
    }

    private static WaysCompared compared(Arm... ways) {
        return WaysCompared.ofLooks(List.of(List.of(ways)), Set.of());
    }

    /** Pearson's chi-square by Apache commons-math; Mantel and Haenszel's has n - 1 in place of n. */
    @Test
    void the_chance_of_the_shares_is_that_of_mantel_and_haenszel() {
        WaysCompared compared = compared(arm("tray", 8, 10, 24), arm("bag", 8, 19, 24));
        double pearson = new ChiSquareTest().chiSquare(new long[][] {{10, 14}, {19, 5}});

        double expected = new org.apache.commons.math3.distribution.ChiSquaredDistribution(1)
                .cumulativeProbability(pearson * 47 / 48);
        assertThat(compared.shareChance().orElseThrow()).isCloseTo(1 - expected, within(1e-9));
    }

    /** Of two blocks in which one way did better and worse by as much, the sum shows nothing. */
    @Test
    void shares_are_compared_within_blocks() {
        WaysCompared compared = WaysCompared.ofLooks(
                List.of(
                        List.of(arm("tray", 8, 4, 20), arm("bag", 8, 16, 20)),
                        List.of(arm("tray", 8, 16, 20), arm("bag", 8, 4, 20))),
                Set.of());

        assertThat(compared.shareChance().orElseThrow()).isCloseTo(1, within(1e-9));
    }

    @Test
    void a_way_that_is_only_slower_shows_in_the_speed_though_seeds_that_never_came_hide_it_in_the_log_rank() {
        WaysCompared compared = compared(arm("tray", 10, 12, 24), arm("bag", 6, 12, 24));

        assertThat(compared.speedChance().orElseThrow()).isLessThan(0.001);
        assertThat(compared.shareChance().orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(compared.chance()).isGreaterThan(0.05);
        assertThat(WaysWords.answer(compared))
                .first()
                .asString()
                .startsWith("With bag it was about 4 days faster than with tray");
        assertThat(WaysWords.answer(compared)).last().asString().startsWith("The days are of those that came;");
    }

    @Test
    void among_several_comparisons_only_what_chance_does_not_explain_is_told() {
        WaysCompared compared = compared(arm("tray", 10, 12, 24), arm("bag", 6, 14, 24));

        assertThat(WaysWords.ofSeveral(compared, 0.01, 1))
                .containsExactly(
                        WaysWords.answer(compared).get(0),
                        "Shares did not differ beyond chance: 12 of 24 (50 %) with tray, 14 of 24 (58 %) with bag.",
                        "Chances: 0.010 for speed, 1.00 for share.");
        assertThat(WaysWords.ofSeveral(compared, 0.2, 1)).first().isEqualTo("Speeds did not differ beyond chance.");
    }

    @Test
    void each_doubt_has_a_sentence_of_its_own() {
        assertThat(WaysWords.doubts(Set.of(Doubt.values())))
                .hasSize(Doubt.values().length)
                .doesNotHaveDuplicates();
    }
}
