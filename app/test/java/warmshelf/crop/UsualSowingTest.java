package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.ReferenceTable;
import warmshelf.testing.Crops;

class UsualSowingTest {
    @Test
    void every_row_is_of_a_crop_of_the_reference() {
        for (CSVRecord row : ReferenceTable.rows("usual-sowing.csv")) {
            assertThat(UsualSowing.of(Crops.of(row.get("crop_id")))).isPresent();
        }
    }

    // Univ. of Georgia, "Soil Temperatures: Don't Rush Mother Nature" (newswire.caes.uga.edu/story/822): least soil
    // temperatures
    // for planting, in °F. Its list and those that the program uses differ by no more than 5 °F.
    @ParameterizedTest
    @CsvSource({
        "cucumber,60",
        "snap-bean,60",
        "sweet-corn,65",
        "watermelon,70",
        "summer-squash,70",
        "winter-squash,70",
        "okra,75",
        "muskmelon,75"
    })
    void the_soil_is_as_warm_as_another_extension_service_wants_it(String crop, double fahrenheit) {
        double soilC = UsualSowing.of(Crops.of(crop)).orElseThrow().soilC().orElseThrow();

        assertThat(soilC * 9 / 5 + 32).isCloseTo(fahrenheit, within(5.1));
    }

    @Test
    void what_bears_moving_has_no_row() {
        assertThat(UsualSowing.of(Crops.PEPPER)).isEmpty();
        assertThat(UsualSowing.of(Crops.KALE)).isEmpty();
    }
}
