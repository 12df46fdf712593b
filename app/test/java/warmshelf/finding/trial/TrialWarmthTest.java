package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.WarmDays;
import warmshelf.words.Units;

class TrialWarmthTest {
    private static final UUID TRIAL = UUID.randomUUID();
    private static final LocalDate MARCH_6 = LocalDate.of(2027, 3, 6);

    @Test
    void a_way_moved_to_a_warmer_mat_is_told_beside_its_fellow() {
        List<TrialWarmth> apart = TrialWarmth.of(List.of(way("A", 1, days(24), false), way("B", 1, days(28), true)));

        assertThat(apart)
                .singleElement()
                .satisfies(each -> assertThat(each.words(Units.METRIC))
                        .startsWith("Trial 3: way B would lie at 28 °C on Sat 6 Mar and way A at 24 °C."));
    }

    @Test
    void two_that_go_together_to_one_mat_stay_alike() {
        assertThat(TrialWarmth.of(List.of(way("A", 1, days(28), true), way("B", 1, days(28), true))))
                .isEmpty();
    }

    @Test
    void what_is_apart_already_and_does_not_move_is_not_told_again() {
        assertThat(TrialWarmth.of(List.of(way("A", 1, days(24), false), way("B", 1, days(28), false))))
                .isEmpty();
    }

    @Test
    void a_tenth_of_a_degree_is_no_other_warmth_and_another_block_no_fellow() {
        assertThat(TrialWarmth.of(List.of(way("A", 1, days(24), false), way("B", 1, days(24.1), true))))
                .isEmpty();
        assertThat(TrialWarmth.of(List.of(way("A", 1, days(24), false), way("B", 2, days(28), true))))
                .isEmpty();
    }

    @Test
    void days_on_which_only_one_lies_on_a_mat_do_not_count() {
        SortedMap<LocalDate, Double> later =
                TrialWarmthStore.byDay(WarmDays.throughout(MARCH_6.plusDays(20), MARCH_6.plusDays(30), 28));

        assertThat(TrialWarmth.of(List.of(way("A", 1, days(24), false), way("B", 1, later, true))))
                .isEmpty();
    }

    private static SortedMap<LocalDate, Double> days(double celsius) {
        return TrialWarmthStore.byDay(WarmDays.throughout(MARCH_6, MARCH_6.plusDays(10), celsius));
    }

    private static TrialWarmth.Lying way(
            String letter, int block, SortedMap<LocalDate, Double> celsius, boolean moves) {
        return new TrialWarmth.Lying(TRIAL, 3, block, letter, celsius, moves);
    }
}
