package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
    @ParameterizedTest
    @CsvSource({
        "tomatoe, Tomato",
        "jalepeno, Jalapeño",
        "jalepeno, Early Jalapeño",
        "capsicum anuum, Capsicum annuum",
        "brocoli, Broccoli",
        "lettice, Lettuce",
        "peper, 'Pepper, sweet and mild hot'",
        "HARBUOR, Harbour Light"
    })
    void a_slip_or_two_are_forgiven(String typed, String name) {
        assertThat(Spelling.meant(typed, name)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"leek, Leaf lettuce", "kale, Sage", "bean, Beet", "dill, Chervil", "%, 100% Red"})
    void another_word_is_another_word(String typed, String name) {
        assertThat(Spelling.meant(typed, name)).isFalse();
    }
}
