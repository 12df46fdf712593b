package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ObservedShareTest {
    /** Exact limits as printed by the pages named in the last column. */
    @ParameterizedTest
    @CsvSource({
        "5, 25, 0.068, 0.407, 0.0005, influentialpoints.com/Training/confidence_intervals_of_proportions.htm",
        "12, 150, 0.042, 0.136, 0.0005, statulator.com/help/ci1P-help.html",
        "2, 12, 0.02086253, 0.48413775, 0.00000001, gist.github.com/johnmyleswhite/a5f5048a5249b9b91e90302c4e6f00df",
        "3, 7, 0.09899, 0.8159, 0.00005, winvector.github.io/sigr/reference/wrapBinomTestS.html",
        "300, 700, 0.3916, 0.4662, 0.00005, winvector.github.io/sigr/reference/wrapBinomTestS.html"
    })
    void exact_limits_are_the_published_ones(int came, int of, double low, double high, double tolerance, String page) {
        ConfidenceInterval exact = new ObservedShare(came, of).exact();
        assertThat(exact.low()).as(page).isCloseTo(low, within(tolerance));
        assertThat(exact.high()).as(page).isCloseTo(high, within(tolerance));
    }

    /** statulator.com/help/ci1P-help.html prints Wilson's 0.046 to 0.135 for 12 of 150. */
    @Test
    void wilsons_limits_are_the_published_ones() {
        ConfidenceInterval wilson = new ObservedShare(12, 150).wilson();
        assertThat(wilson.low()).isCloseTo(0.046, within(0.0005));
        assertThat(wilson.high()).isCloseTo(0.135, within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({"1, 20", "17, 20", "81, 263", "19, 20", "1, 2"})
    void both_agree_with_a_general_purpose_library(int came, int of) {
        ObservedShare share = new ObservedShare(came, of);
        var exact = new ClopperPearsonInterval().createInterval(of, came, 0.95);
        var wilson = new WilsonScoreInterval().createInterval(of, came, 0.95);
        assertThat(share.exact().low()).isCloseTo(exact.getLowerBound(), within(1e-8));
        assertThat(share.exact().high()).isCloseTo(exact.getUpperBound(), within(1e-8));
        assertThat(share.wilson().low()).isCloseTo(wilson.getLowerBound(), within(1e-8));
        assertThat(share.wilson().high()).isCloseTo(wilson.getUpperBound(), within(1e-8));
    }

    /** The limit where none or all came is 1 - 0.025^(1/n), which the library leaves out. */
    @Test
    void none_or_all_have_one_sided_exact_limits() {
        assertThat(new ObservedShare(0, 20).exact().low()).isZero();
        assertThat(new ObservedShare(0, 20).exact().high()).isCloseTo(1 - Math.pow(0.025, 1 / 20.0), within(1e-9));
        assertThat(new ObservedShare(20, 20).exact().low()).isCloseTo(Math.pow(0.025, 1 / 20.0), within(1e-9));
        assertThat(new ObservedShare(20, 20).exact().high()).isEqualTo(1);
    }

    /** Newcombe 1998, Stat. Med. 17, 873-890, table II, method 10, from memory: 56/70 less 48/80 is 0.0524 to 0.3339. */
    @Test
    void the_difference_of_two_shares_has_the_published_interval() {
        ConfidenceInterval difference = new ObservedShare(56, 70).less(new ObservedShare(48, 80));
        assertThat(difference.low()).isCloseTo(0.0524, within(0.00005));
        assertThat(difference.high()).isCloseTo(0.3339, within(0.00005));
    }

    @Test
    void more_than_all_is_no_share() {
        assertThatThrownBy(() -> new ObservedShare(11, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ObservedShare(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
