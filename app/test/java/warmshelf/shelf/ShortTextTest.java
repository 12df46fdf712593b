package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ShortTextTest {
    @Test
    void text_that_fits_stays_as_it_is() {
        assertThat(ShortText.fit("Pepper", 60, true)).isEqualTo("Pepper");
    }

    @Test
    void text_that_does_not_fit_is_cut_and_says_so() {
        assertThat(ShortText.fit("Butternut squash", 60, true)).isEqualTo("Buttern…");
    }

    @Test
    void where_not_even_three_letters_fit_nothing_is_written() {
        assertThat(ShortText.fit("Pepper", 15, false)).isEmpty();
    }

    @Test
    void a_long_name_gives_way_to_the_first_name_with_an_initial() {
        assertThat(ShortText.fitName("Ilse Brandt", 60)).isEqualTo("Ilse B.");
        assertThat(ShortText.fitName("Ilse Brandt", 140)).isEqualTo("Ilse Brandt");
    }

    @Test
    void a_long_first_name_is_cut() {
        assertThat(ShortText.fitName("Marguerite Okafor", 60)).isEqualTo("Margueri…");
    }

    @Test
    void what_a_crop_is_called_beside_goes_on_below_in_whole_words() {
        assertThat(ShortText.secondLine("Pepper, sweet and mild hot", 83)).isEqualTo("sweet");
        assertThat(ShortText.secondLine("Pepper, very hot (habanero group)", 83))
                .isEqualTo("very hot");
        assertThat(ShortText.fitCrop("Brussels sprouts", 83)).isEqualTo("Brussels");
        assertThat(ShortText.secondLine("Brussels sprouts", 83)).isEqualTo("sprouts");
        assertThat(ShortText.secondLine("Tomato", 83)).isEmpty();
    }

    @Test
    void a_long_crop_gives_way_to_the_word_before_its_kind() {
        assertThat(ShortText.fitCrop("Pepper, very hot (habanero group)", 60)).isEqualTo("Pepper");
        assertThat(ShortText.fitCrop("Onion (seedlings)", 60)).isEqualTo("Onion");
        assertThat(ShortText.fitCrop("Onion (seedlings)", 140)).isEqualTo("Onion (seedlings)");
    }
}
