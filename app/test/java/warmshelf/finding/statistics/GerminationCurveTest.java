package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import warmshelf.finding.statistics.GerminationCurve.Point;
import warmshelf.finding.statistics.GerminationCurve.Step;

class GerminationCurveTest {
    /** Klein and Moeschberger, Survival Analysis (1997), example 5.2, from memory: 0.954 0.920 0.832 0.761 0.668 0.586 0.467. */
    @Test
    void the_months_of_radiation_alone_have_the_published_curve() {
        GerminationCurve curve = CosmesisData.RADIATION.curve();
        assertThat(curve.steps()).extracting(Step::after).containsExactly(4.0, 6.0, 7.0, 11.0, 24.0, 33.0, 38.0, 46.0);
        assertThat(curve.steps()).extracting(Step::by).containsExactly(5.0, 7.0, 8.0, 12.0, 25.0, 34.0, 40.0, 48.0);
        double[] published = {0.954, 0.920, 0.832, 0.761, 0.668, 0.586, 0.466};
        double left = 1;
        for (int i = 0; i < published.length; i++) {
            left -= curve.steps().get(i).share();
            assertThat(left).isCloseTo(published[i], within(0.0015));
        }
        // what was never seen to come lies in the last step, because one patient's interval ends at 48
        assertThat(curve.steps().get(7).share()).isCloseTo(0.4656, within(0.0001));
        assertThat(curve.never()).isCloseTo(0, within(1e-6));
    }

    /** Kaplan and Meier's figures of the two arms of the 6-MP trial, worked out by hand beside the data. */
    @Test
    void exact_times_give_the_complement_of_kaplan_and_meier() {
        assertThat(left(LeukaemiaData.TREATED.curve()))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 5e-5 ? 0 : 1, Double.class)
                .containsExactly(0.8571, 0.8067, 0.7529, 0.6902, 0.6275, 0.5378, 0.4482);
        assertThat(LeukaemiaData.TREATED.curve().median()).hasValue(23);
        assertThat(LeukaemiaData.PLACEBO.curve().median()).hasValue(8);
    }

    /** The share left after each step. */
    private static List<Double> left(GerminationCurve curve) {
        List<Double> left = new ArrayList<>();
        double sum = 0;
        for (Step step : curve.steps()) {
            sum += step.share();
            left.add(1 - sum);
        }
        return left;
    }

    @Test
    void seeds_that_were_looked_at_together_need_no_search() {
        GerminationCurve curve = GerminationCurve.of(List.of(
                SproutingTime.between(5, 6),
                SproutingTime.between(6, 9),
                SproutingTime.between(6, 9),
                SproutingTime.notBy(14)));
        assertThat(curve.steps()).containsExactly(new Step(5, 6, 0.25), new Step(6, 9, 0.5));
        assertThat(curve.never()).isEqualTo(0.25);
        assertThat(curve.median()).hasValue(7.5);
        assertThat(curve.halfOfThoseThatCame().orElseThrow()).isCloseTo(6.75, within(1e-9));
        assertThat(curve.shareBy(7.5)).isCloseTo(0.5, within(1e-12));
        assertThat(curve.points())
                .containsExactly(new Point(0, 0), new Point(5, 0), new Point(6, 0.25), new Point(9, 0.75));
    }

    @Test
    void nothing_else_is_more_likely_than_what_is_found() {
        Random random = new Random(5);
        for (int trial = 0; trial < 40; trial++) {
            List<SproutingTime> times = new ArrayList<>();
            for (int seed = 0; seed < 60; seed++) {
                double after = random.nextInt(20);
                double by = after + 1 + random.nextInt(6);
                times.add(random.nextInt(4) == 0 ? SproutingTime.notBy(after) : SproutingTime.between(after, by));
            }
            GerminationCurve curve = GerminationCurve.of(times);
            double sum = curve.never()
                    + curve.steps().stream().mapToDouble(Step::share).sum();
            assertThat(sum).isCloseTo(1, within(1e-6));
            // the conditions of Kuhn and Tucker, written out anew
            for (int day = 0; day < 26; day++) {
                assertThat(gain(times, curve, day)).isLessThan(60 * (1 + 1e-5));
            }
        }
    }

    /** What more share within (day, day + 1] would gain. */
    private static double gain(List<SproutingTime> times, GerminationCurve curve, int day) {
        double gain = 0;
        for (SproutingTime time : times) {
            if (time.after() <= day && time.by() >= day + 1) {
                gain += 1 / chance(time, curve);
            }
        }
        return gain;
    }

    private static double chance(SproutingTime time, GerminationCurve curve) {
        double chance = time.sprouted() ? 0 : curve.never();
        for (Step step : curve.steps()) {
            chance += step.after() >= time.after() && step.by() <= time.by() ? step.share() : 0;
        }
        return chance;
    }

    @Test
    void nothing_that_sprouted_has_no_median() {
        GerminationCurve curve = GerminationCurve.of(List.of(SproutingTime.notBy(20), SproutingTime.notBy(12)));
        assertThat(curve.steps()).isEmpty();
        assertThat(curve.never()).isEqualTo(1);
        assertThat(curve.median()).isEmpty();
        assertThat(curve.halfOfThoseThatCame()).isEmpty();
    }

    @Test
    void no_seed_no_curve() {
        assertThatThrownBy(() -> GerminationCurve.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
