package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.CelsiusRange;
import warmshelf.words.Units;

class BandTest {
    @ParameterizedTest
    @CsvSource({
        "23.2, 30.9, 24, 30",
        "24.0, 30.0, 24, 30",
        "24.1, 25.0, 25, 25",
        "24.2, 24.4, 24, 24",
        "24.6, 24.9, 25, 25",
        "-1.5, 1.5, -1, 1"
    })
    void holds_the_whole_degrees_within_a_range_or_else_the_one_nearest_its_middle(
            double low, double high, int lowC, int highC) {
        assertThat(Band.within(new CelsiusRange(low, high))).isEqualTo(new Band(lowC, highC));
    }

    @Test
    void both_ends_belong_to_the_band() {
        Band band = new Band(24, 30);

        assertThat(IntStream.rangeClosed(22, 32).filter(band::contains)).containsExactly(24, 25, 26, 27, 28, 29, 30);
    }

    // 75 °F is 23.9 °C, 80 °F 26.7 °C and 81 °F 27.2 °C, 74 and 82 °F are 23.3 and 27.8 °C: by definition of the
    // scales.
    @ParameterizedTest
    @CsvSource({"23.9,true", "26.7,true", "27.2,true", "23.3,false", "27.8,false", "23.5,true", "27.4,true"})
    void a_set_point_suits_as_the_whole_degree_that_it_counts_as(double celsius, boolean suits) {
        assertThat(new Band(24, 27).contains(celsius)).isEqualTo(suits);
    }

    /** Common practice gives 24 to 27 °C as 75 to 80 °F: whoever reads the ends may type them. */
    @Test
    void both_ends_of_every_band_suit_as_they_are_read_in_either_unit() {
        for (Units units : List.of(Units.METRIC, Units.AMERICAN)) {
            for (int low = 10; low <= 40; low++) {
                Band band = new Band(low, low);

                assertThat(band.contains(units.celsiusOf((int) units.degrees(low))))
                        .as(band.words(units))
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"24,30,30,32,true", "24,30,31,32,false", "24,30,18,24,true", "24,30,18,23,false", "24,30,26,27,true"})
    void two_bands_overlap_when_one_degree_suits_both_whichever_is_asked(
            int lowC, int highC, int otherLowC, int otherHighC, boolean overlap) {
        Band band = new Band(lowC, highC);
        Band other = new Band(otherLowC, otherHighC);

        assertThat(band.overlaps(other)).isEqualTo(overlap);
        assertThat(other.overlaps(band)).isEqualTo(overlap);
    }

    @ParameterizedTest
    @CsvSource({"20,24", "24,24", "27,27", "27.2,27.2", "30.4,30.4", "30.5,30", "35,30"})
    void the_nearest_degree_is_the_one_itself_or_the_end_towards_it(double celsius, double nearest) {
        assertThat(new Band(24, 30).nearestTo(celsius)).isEqualTo(nearest);
    }

    @Test
    void words_give_the_readers_unit_alone() {
        // 24 °C is 75.2 °F, 30 °C is 86 °F: by definition of the scales.
        assertThat(new Band(24, 30).words(Units.METRIC)).isEqualTo("24–30 °C");
        assertThat(new Band(24, 30).words(Units.AMERICAN)).isEqualTo("75–86 °F");
    }

    @Test
    void a_band_upside_down_is_refused() {
        assertThatThrownBy(() -> new Band(30, 24)).hasMessage("a band needs its low end first, was 30 to 24");
    }

    /**
     * Helly's theorem in one dimension (Eduard Helly, 1923): intervals of a line have a common point exactly when every two
     * of them have. This is why a mat's temperature can be judged tray against tray.
     */
    @Test
    void many_bands_share_a_degree_exactly_when_every_two_of_them_do() {
        Random random = new Random(1923);
        int shared = 0;
        for (int run = 0; run < 5_000; run++) {
            List<Band> bands = bands(random, 2 + random.nextInt(5));

            boolean common = IntStream.rangeClosed(0, 40)
                    .anyMatch(celsius -> bands.stream().allMatch(band -> band.contains(celsius)));

            assertThat(everyTwoOverlap(bands)).as(bands.toString()).isEqualTo(common);
            shared += common ? 1 : 0;
        }
        assertThat(shared).as("both answers must occur often").isBetween(500, 4_500);
    }

    private static List<Band> bands(Random random, int count) {
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int low = 10 + random.nextInt(20);
            bands.add(new Band(low, low + random.nextInt(12)));
        }
        return bands;
    }

    private static boolean everyTwoOverlap(List<Band> bands) {
        return bands.stream().allMatch(one -> bands.stream().allMatch(one::overlaps));
    }
}
