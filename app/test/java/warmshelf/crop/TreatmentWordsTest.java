package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.ReferenceTable;
import warmshelf.words.Units;

class TreatmentWordsTest {
    private static final Units US = Units.AMERICAN;

    @Test
    void every_crop_of_the_reference_has_words_in_the_readers_units_alone() {
        assertThat(CropCatalogue.bundled().all()).allSatisfy(crop -> {
            assertThat(words(crop.id(), Units.METRIC)).doesNotContain("°F").doesNotContainPattern("\\d F\\b");
            assertThat(words(crop.id(), US)).doesNotContain("°C").doesNotContainPattern("\\d C\\b");
        });
    }

    @Test
    void what_a_source_wrote_is_never_said_in_its_own_words() {
        List<String> notes = ReferenceTable.rows("seed-traits.csv").stream()
                .map(row -> row.get("note"))
                .toList();

        assertThat(notes).isNotEmpty();
        assertThat(CropCatalogue.bundled().all())
                .allSatisfy(crop -> assertThat(words(crop.id(), US)).isNotIn(notes));
    }

    // The rows of crops.csv and seed-traits.csv that these sentences come from name their sources.
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        tomato          | F | No treatment needed.
        pepper          | F | A soak is optional.
        pepper-very-hot | F | One strain of it that was tried slept on at a steady warmth until 24 hours at 59 °F, or light, woke it; others may not. A soak of up to 24 hours is optional.
        okra            | C | Hard coat: nick it, or give it a soak of 12 to 24 hours.
        celery          | C | Wants diffuse light, and nights 6 to 8 °C cooler than days.
        celery          | F | Wants diffuse light, and nights 10 to 15 °F cooler than days.
        watermelon      | F | Kinds without seeds want 85–90 °F.
        lavender        | C | 2 to 4 weeks cold and moist before sowing help.
        artichoke       | F | About 10 days under 50 °F as seedlings bring heads in the first year.
        """)
    void each_is_said_of_the_figures(String crop, String unit, String words) {
        assertThat(words(crop, Units.of(unit, "cm"))).isEqualTo(words);
    }

    @Test
    void of_a_crop_of_which_nothing_is_known_nothing_is_said() {
        assertThat(new TreatmentWords(US).of(SeedTreatment.UNKNOWN)).isEmpty();
    }

    private static String words(String crop, Units units) {
        return new TreatmentWords(units).of(CropCatalogue.bundled().get(crop).treatment());
    }
}
