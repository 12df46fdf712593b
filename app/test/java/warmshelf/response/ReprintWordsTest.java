package warmshelf.response;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.ReferenceTable;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.EmergenceDisagreement;
import warmshelf.words.Units;

class ReprintWordsTest {
    private static final CropCatalogue CROPS = CropCatalogue.bundled();
    private static final Units US = Units.AMERICAN;

    @Test
    void the_days_each_reprint_gives_are_told_with_the_one_we_use() {
        assertThat(words("eggplant", Units.METRIC))
                .contains("At 25 °C reprints of the trials give 5 or 8 days; we use 8.");
        assertThat(words("eggplant", US)).contains("At 77 °F reprints of the trials give 5 or 8 days; we use 8.");
    }

    @Test
    void a_cell_that_one_print_leaves_empty_is_told_in_words() {
        assertThat(words("eggplant", US))
                .contains(
                        "At 59 °F one print of the trials says “not tested”, another “13 days”; we use “not tested”.");
        assertThat(words("pepper", Units.METRIC))
                .containsExactly(
                        "At 10 °C one print of the trials says “nothing came up”, another “1 % came up, in days"
                                + " not given”; we use “nothing came up”.");
        assertThat(words("celery", Units.METRIC))
                .containsExactly(
                        "At 25 °C one print of the trials says “nothing came up”, another “65 % came up, in days"
                                + " not given”; we use “65 % came up, in days not given”.");
    }

    @Test
    void two_pages_that_print_the_same_are_told_once() {
        assertThat(words("asparagus", US))
                .containsExactly(
                        "At 86 °F reprints of the trials give 11 or 12 days; we use 12.",
                        "At 95 °F reprints of the trials give 19 or 20 days; we use 20.");
    }

    @Test
    void crops_whose_days_rest_on_other_figures_or_on_prints_that_agree_have_none() {
        assertThat(words("tomato", US)).isEmpty();
        assertThat(words("pepper-very-hot", US)).isEmpty();
    }

    @Test
    void what_we_say_we_use_is_what_the_table_of_days_holds() {
        for (var row : ReferenceTable.rows("emergence-disagreements.csv")) {
            String used = ReferenceTable.rows("emergence-days.csv").stream()
                    .filter(cell -> cell.get("crop").equals(row.get("crop")))
                    .filter(cell -> cell.get("temp_f").equals(row.get("temp_f")))
                    .map(cell -> cell.get("days"))
                    .findFirst()
                    .orElseThrow();

            String taken = row.get("first_outcome").equals("none") ? "NG" : row.get("first_days");
            assertThat(used).as(row.toString()).isEqualTo(taken);
        }
    }

    private static List<String> words(String crop, Units units) {
        List<EmergenceDisagreement> found = CROPS.responseOf(CROPS.get(crop)).disagreements();
        return found.stream().map(each -> ReprintWords.of(each, units)).toList();
    }
}
