package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.finding.statistics.Calibration.Bin;
import warmshelf.finding.statistics.Calibration.Told;

class CalibrationTest {
    @Test
    void each_bin_tells_what_was_said_and_what_came() {
        List<Told> told = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            told.add(new Told(0.9, i < 8));
            told.add(new Told(0.2, i < 3));
        }
        Calibration calibration = Calibration.of(told, 2);
        assertThat(calibration.bins())
                .extracting(Bin::came)
                .containsExactly(new ObservedShare(3, 10), new ObservedShare(8, 10));
        assertThat(calibration.bins().get(1).chance()).isCloseTo(0.9, within(1e-12));
    }

    /** The example of en.wikipedia.org/wiki/Brier_score: 0.7 told and it rains is 0.09; 0.3 told and it rains is 0.49. */
    @Test
    void briers_score_is_that_of_the_worked_example() {
        assertThat(Calibration.of(List.of(new Told(0.7, true)), 5).brier()).isCloseTo(0.09, within(1e-12));
        assertThat(Calibration.of(List.of(new Told(0.3, true)), 5).brier()).isCloseTo(0.49, within(1e-12));
    }

    @Test
    void nothing_told_is_refused() {
        assertThatThrownBy(() -> Calibration.of(List.of(), 5)).isInstanceOf(IllegalArgumentException.class);
    }
}
