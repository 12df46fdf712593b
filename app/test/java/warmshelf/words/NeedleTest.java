package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeedleTest {
    @ParameterizedTest
    @CsvSource({
        "zoe, Zoë Brandt",
        "ZOË, zoe brandt",
        "brandt zo, Zoë Brandt",
        "ﬁg, Fig",
        "lantern pep, Pepper · Lantern Row",
        "øst, Ørsted Øst",
    })
    void parts_in_any_order_are_found_whatever_their_capitals_and_accents(String typed, String text) {
        assertThat(Needle.of(typed).isIn(text)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"zoey, Zoë", "%, Zoë", "_, Zoë", "zoe ada, Zoë Brandt"})
    void what_is_not_there_is_not_found_and_no_sign_stands_for_others(String typed, String text) {
        assertThat(Needle.of(typed).isIn(text)).isFalse();
    }

    @Test
    void parts_may_stand_in_different_texts_and_nothing_typed_is_everywhere() {
        assertThat(Needle.of("ada m3").isIn("Mat M3", "Ada")).isTrue();
        assertThat(Needle.of("   ").isEmpty()).isTrue();
        assertThat(Needle.of("").isIn("Ada")).isTrue();
    }
}
