package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.SpeedDifference;
import warmshelf.finding.statistics.SproutingTime;

class TrialOutlookTest {
    private static final TrialOutlook PEPPERS = new TrialOutlook(2, 24, 1, 0.8, 8, 0.22);

    @Test
    void what_is_said_of_seeds_is_what_trial_sizes_say() {
        assertThat(PEPPERS.sprouts()).isCloseTo(19.2, within(1e-9));
        assertThat(PEPPERS.words().get(0))
                .isEqualTo("Of 24 seeds of each way about 19 should come up, half of them by about day 8.");
        assertThat(PEPPERS.words()).anyMatch(words -> words.startsWith("One tray or bag of each way"));
        assertThat(PEPPERS.words()).noneMatch(words -> words.startsWith("Three ways"));
    }

    /**
     * So many seeds, so many of them dead, days drawn around the median and looked at daily: what is promised to show does so in about
     * 8 trials of 10, judged as the report judges it.
     */
    @Test
    void a_delay_that_is_said_to_show_does_so_in_about_8_of_10_trials() {
        Random random = new Random(41);
        double ratio = (PEPPERS.days() + PEPPERS.daysShown()) / PEPPERS.days();
        int trials = 200;
        int shown = 0;
        for (int trial = 0; trial < trials; trial++) {
            List<Arm> block = List.of(drawn("quick", 1, 0.8, random), drawn("slow", ratio, 0.8, random));
            shown += foundSlower(block) ? 1 : 0;
        }
        // three standard errors around 0.8 among 200
        assertThat((double) shown / trials).isCloseTo(0.8, within(0.085));
    }

    private static boolean foundSlower(List<Arm> block) {
        return SpeedDifference.between(List.of(block.get(0)), List.of(block.get(1)))
                        .orElseThrow()
                        .interval()
                        .high()
                < 0;
    }

    private static Arm drawn(String name, double ratio, double share, Random random) {
        List<SproutingTime> times = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double day = 8 * ratio * Math.exp(0.22 * random.nextGaussian());
            times.add(
                    random.nextDouble() < share
                            ? SproutingTime.between(Math.ceil(day) - 1, Math.ceil(day))
                            : SproutingTime.notBy(40));
        }
        return new Arm(name, times);
    }
}
