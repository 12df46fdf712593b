package warmshelf.response;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Standing;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class SeasonLineTest {

    @Test
    void what_it_bears_and_what_makes_it_flower_stand_on_lines_of_their_own() {
        assertThat(words("celery"))
                .contains("Bears: nights down to -2 °C, hardened off")
                .contains("Flowers early: after about 10 days of nights under 13 °C while young");
        assertThat(words("tomato")).contains("Bears: no frost");
    }

    // Iowa's Reiman Gardens: broccoli to 25 °F (-3.9 °C); University of Minnesota Extension M1227: a light frost, 28
    // °F.
    @Test
    void where_two_tables_differ_both_are_shown() {
        assertThat(words("broccoli"))
                .contains("Bears: nights down to -4 °C, hardened off; another table vouches for -2 °C");
    }

    @Test
    void the_other_parts_of_the_year_and_its_years_are_told() {
        assertThat(words("spinach"))
                .contains(
                        "Autumn: sown in summer for it too",
                        "Over winter: planted out 3 to 5 weeks before the first frost",
                        "Again: sown every 7 to 14 days");
        assertThat(words("foxglove")).contains("Years: Biennial: it flowers in its second year.");
        assertThat(words("tomato")).contains("Quickest kinds: 45 to 60 days from planting out");
    }

    @Test
    void each_line_says_who_says_it_or_that_it_holds_of_the_class() {
        for (Crop crop : CropCatalogue.bundled().all()) {
            for (SeasonLine line : SeasonLine.of(crop, Units.METRIC)) {
                assertThat(line.words()).as(crop.id()).isNotBlank();
                if (line.source() == null) {
                    assertThat(line.label()).as(crop.id()).isEqualTo("Bears");
                }
            }
        }
        SeasonLine celeriac = SeasonLine.of(Crops.of("celeriac"), Units.METRIC).get(1);
        assertThat(Objects.requireNonNull(celeriac.source()).standing()).isEqualTo(Standing.COMMON_PRACTICE);
    }

    private static List<String> words(String crop) {
        return SeasonLine.of(Crops.of(crop), Units.METRIC).stream()
                .map(line -> line.label() + ": " + line.words())
                .toList();
    }
}
