package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.words.FormReader;

class PassphraseRuleTest {

    /** The first six stand in published lists of what leaked most often (from memory); the others are made of words of here. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "password1234",
                "qwertyuiop12",
                "123456789012",
                "iloveyou1234",
                "passwordpassword",
                "1q2w3e4r5t6y",
                "warmshelfwarmshelf",
                "Maria Lindqvist 1",
                "warmshelf2027"
            })
    void what_is_guessed_first_is_refused(String passphrase) {
        assertThat(problem(passphrase)).contains("easy to guess").doesNotContain(passphrase);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "three warm trays",
                "correct horse battery staple",
                "grün und drei Töpfe",
                "a lamp over lettuce",
                "Xk9!vb2#Lq7pTz",
            })
    void what_takes_many_guesses_is_taken_whatever_its_characters(String passphrase) {
        assertThat(problem(passphrase)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {64, 200})
    void a_long_one_is_judged_as_well(int length) {
        String words = "nine tall jars of beans behind the old green door ";

        assertThat(problem(words.repeat(5).substring(0, length).strip() + "x")).isEmpty();
    }

    private static String problem(String passphrase) {
        FormReader form = new FormReader(Map.of("passphrase", List.of(passphrase)));
        PassphraseRule.read(form, "passphrase", "The passphrase", "Maria Lindqvist");
        return form.problems().getOrDefault("passphrase", "");
    }
}
