package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class BulbKindTest {
    // Lengths of the day at the June solstice as almanacs print them (from memory): the equator 12 h 7 min, Miami 13 h
    // 45 min,
    // Minneapolis 15 h 37 min, London 16 h 38 min; beyond the polar circle the sun does not set.
    @ParameterizedTest
    @CsvSource({"0,12.12", "25.76,13.75", "44.98,15.61", "51.51,16.64", "-44.98,15.61", "69,24"})
    void the_longest_day_is_that_of_the_almanac(double latitude, double hours) {
        assertThat(BulbKind.longestDay(latitude)).isCloseTo(hours, within(0.03));
    }

    // Iowa State University Extension: long-day kinds are best for Iowa and the upper Midwest.
    @Test
    void in_the_north_long_day_kinds_are_named_and_in_the_south_short_day_ones() {
        assertThat(BulbKind.of(Crops.of("onion"), 46.8, Units.AMERICAN))
                .contains(
                        "At 46.8° of latitude the longest day has 15.9 hours: take long-day kinds, whose bulbs begin at"
                                + " 14 hours or more. Short-day kinds stay small there.");
        assertThat(BulbKind.of(Crops.of("onion"), 29.8, Units.AMERICAN).orElseThrow())
                .contains("take short-day kinds");
    }

    @Test
    void only_what_bulbs_by_the_day_is_told_so() {
        assertThat(BulbKind.of(Crops.of("leek"), 46.8, Units.AMERICAN)).isEmpty();
        assertThat(BulbKind.of(Crops.PEPPER, 46.8, Units.AMERICAN)).isEmpty();
    }
}
