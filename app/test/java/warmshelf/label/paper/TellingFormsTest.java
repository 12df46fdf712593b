package warmshelf.label.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TellingFormsTest {
    private static final List<String> OTHERS = List.of("Lantern Row Early", "Lantern Row Late", "Ore Dock Sweet");

    @Test
    void what_others_share_goes_before_what_tells_apart() {
        assertThat(TellingForms.forms("Lantern Row Early", "Pepper, sweet", OTHERS))
                .containsExactly("Lantern Row Early", "Early");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Tomato 'Black Harbor' F1 (organic) | Tomato | Tomato 'Black Harbor' F1 (organic) | Black",
                "Roma | Tomato | Roma | Roma",
                "Pepper | Pepper | Pepper | Pepper",
                "  Ore   Dock Sweet | Pepper | Ore Dock Sweet | Ore",
                "Schwarzwälderkirschtomate | Tomato | Schwarzwälderkirschtomate | Schwarz…ate"
            })
    void a_name_has_forms_from_the_whole_to_one_word_that_is_never_cut_without_a_sign(
            String name, String crop, String longest, String shortest) {
        List<String> forms = TellingForms.forms(name, crop, List.of());

        assertThat(forms.get(0)).isEqualTo(longest);
        assertThat(forms.get(forms.size() - 1)).isEqualTo(shortest);
        assertThat(forms).doesNotHaveDuplicates().noneMatch(String::isBlank);
    }

    @Test
    void words_in_the_middle_are_shortened_between_whole_signs() {
        String last = last(TellingForms.forms("मिर्चकालीमिर्चकालीमिर्च", "", List.of()));

        assertThat(Character.getType(last.codePointAt(last.indexOf('…') + 1)))
                .as(last)
                .isNotIn((int) Character.NON_SPACING_MARK, (int) Character.COMBINING_SPACING_MARK);
    }

    @Test
    void a_crop_loses_its_kinds_before_its_name() {
        assertThat(TellingForms.crop("Pepper, sweet and mild hot"))
                .containsExactly("Pepper, sweet and mild hot", "Pepper");
        assertThat(TellingForms.crop("Squash (winter)")).containsExactly("Squash (winter)", "Squash");
    }

    @Test
    void an_initial_that_tells_two_people_apart_stays() {
        assertThat(TellingForms.person("Dev A.")).containsExactly("Dev A.");
        assertThat(TellingForms.person("Bartholomewina")).contains("Bartholomewina", "Barthol…ina");
    }

    private static String last(List<String> forms) {
        return forms.get(forms.size() - 1);
    }
}
