package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.frost.FrostChart.Mark;

class FrostChartTest {
    private static final FrostSeason SEASON = new FrostSeason(1, 140, 0, 3, 12, 4, 3);

    @Test
    void the_chance_falls_through_spring_and_rises_through_autumn() {
        // heights on paper grow downwards
        assertThat(heights(FrostChart.spring(SEASON, 2027))).isSorted();
        assertThat(heights(FrostChart.autumn(SEASON, 2027))).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void the_drawing_is_told_in_words_too() {
        // day 140 is 20 May; z at 30 % is 0.5244 and at 10 % 1.2816, with a spread of 13 days
        assertThat(FrostChart.spring(SEASON, 2027).description())
                .isEqualTo("50 % after 20 May, 30 % after 27 May, 10 % after 6 Jun.");
    }

    @Test
    void a_chance_that_frost_never_reaches_is_not_marked() {
        FrostChart chart = FrostChart.spring(new FrostSeason(0.4, 40, 0, 3, 12, 4, 3), 2027);

        assertThat(chart.marks()).extracting(Mark::words).hasSize(2).noneMatch(words -> words.startsWith("50 %"));
    }

    @Test
    void every_point_lies_inside_the_box() {
        for (FrostChart chart : List.of(FrostChart.spring(SEASON, 2027), FrostChart.autumn(SEASON, 2028))) {
            assertThat(heights(chart)).allMatch(height -> height >= 0 && height <= 260);
        }
    }

    private static List<Double> heights(FrostChart chart) {
        return Arrays.stream(chart.line().split(" ", -1))
                .map(point -> Double.valueOf(point.split(",", -1)[1]))
                .toList();
    }
}
