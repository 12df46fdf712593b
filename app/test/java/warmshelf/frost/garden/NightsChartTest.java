package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.words.Units;

class NightsChartTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 2, 1);
    private static final LocalDate LAST = LocalDate.of(2027, 2, 11);

    @Test
    void a_missing_night_breaks_the_line() {
        NightsChart chart = chart(night(1, -2), night(2, -4), night(4, 1));

        assertThat(chart.runs()).hasSize(2);
        assertThat(chart.runs().get(0).split(" ")).hasSize(2);
        assertThat(chart.dots()).hasSize(3);
    }

    @Test
    void the_ends_of_the_days_are_the_ends_of_the_drawing_and_colder_is_lower() {
        NightsChart chart = chart(night(0, 3), night(10, -3));

        assertThat(chart.dots()).extracting(NightsChart.Dot::x).containsExactly("62.0", "408.0");
        // three degrees each way and two of room: freezing lies in the middle of 14 and 168
        assertThat(chart.freezing()).isEqualTo(new NightsChart.Line("91.0", "0.0 °C"));
        assertThat(Double.parseDouble(chart.dots().get(1).y())).isGreaterThan(91);
    }

    @Test
    void the_line_of_freezing_is_drawn_where_no_night_was_near_it() {
        assertThat(chart(night(3, 12)).levels())
                .extracting(NightsChart.Line::words)
                .containsExactly("12.0 °C");
        assertThat(chart(night(3, -12)).freezing().words()).isEqualTo("0.0 °C");
    }

    @Test
    void a_level_so_near_to_freezing_that_its_words_would_cover_it_is_not_drawn() {
        assertThat(chart(night(1, 1), night(2, -12)).levels())
                .extracting(NightsChart.Line::words)
                .containsExactly("-12.0 °C");
    }

    @Test
    void the_drawing_is_told_in_words() {
        assertThat(chart(night(1, 0), night(2, -4), night(4, 1)).description())
                .isEqualTo("3 of the nights from 1 Feb to 11 Feb are noted, 2 of them with frost;"
                        + " the coldest was -4.0 °C on 3 Feb.");
    }

    private static NightsChart chart(Night... nights) {
        return NightsChart.of(List.of(nights), FIRST, LAST, Units.METRIC);
    }

    private static Night night(int daysLater, double celsius) {
        return new Night(FIRST.plusDays(daysLater), celsius, "Tom");
    }
}
