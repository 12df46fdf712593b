package warmshelf.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.decision.Decision;
import warmshelf.words.Units;

class ShortCodeTest {
    private static final int CODES = 300;

    @Test
    void a_code_is_read_back_whatever_its_case_and_spaces() {
        ShortCode code = ShortCode.random(new Random(5));

        assertThat(ShortCode.typed(code.text())).isEqualTo(new Decision.Done<>(code));
        assertThat(ShortCode.typed(" " + code.spaced().toLowerCase(java.util.Locale.ROOT) + " "))
                .isEqualTo(new Decision.Done<>(code));
        assertThat(ShortCode.typed(code.spaced().replace(' ', '-'))).isEqualTo(new Decision.Done<>(code));
    }

    /** What ISO 2108 says of the check digit of ISBN-10, which is the same sum modulo 11: every single wrong digit is found. */
    @Test
    void every_single_wrong_sign_is_found() {
        codes().forEach(code -> {
            for (int place = 0; place < 6; place++) {
                for (int sign = 0; sign < ShortCode.SIGNS.length(); sign++) {
                    char wrong = ShortCode.SIGNS.charAt(sign);
                    if (wrong != code.text().charAt(place)) {
                        String typed = code.text().substring(0, place)
                                + wrong
                                + code.text().substring(place + 1);
                        assertCannotBe(typed);
                    }
                }
            }
        });
    }

    /** The same source: and every two digits that changed places. */
    @Test
    void every_two_signs_that_changed_places_are_found() {
        codes().forEach(code -> {
            for (int one = 0; one < 5; one++) {
                for (int other = one + 1; other < 6; other++) {
                    if (code.text().charAt(one) != code.text().charAt(other)) {
                        StringBuilder typed = new StringBuilder(code.text());
                        typed.setCharAt(one, code.text().charAt(other));
                        typed.setCharAt(other, code.text().charAt(one));
                        assertCannotBe(typed.toString());
                    }
                }
            }
        });
    }

    @Test
    void no_sign_is_one_that_is_taken_for_another() {
        assertThat(ShortCode.SIGNS).hasSize(31).doesNotContain("0", "1", "I", "L", "O");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | The code is empty; six letters and digits are accepted",
                "K7P | The code was 'K7P', which has 3 signs; a code has six.",
                "K7P4MO | no code has the sign 'O'; the digits 0 and 1 and the letters I, L and O are never used.",
                "<b>a | no code has the sign '<'",
                "AAAAAAAAAAAAAAAAAAAAAAAAA | The code was 'AAAAAAAAAAAA…', which has 25 signs"
            })
    void what_cannot_be_a_code_is_refused_with_its_sentence(String typed, String sentence) {
        assertThat(ShortCode.typed(typed).refusal())
                .hasValueSatisfying(no -> assertThat(no.words(Units.METRIC)).contains(sentence));
    }

    private static void assertCannotBe(String typed) {
        assertThat(ShortCode.typed(typed).refusal()).contains(new CodeRefusal.CannotBe(typed));
    }

    private static java.util.List<ShortCode> codes() {
        Random random = new Random(11);
        return IntStream.range(0, CODES).mapToObj(i -> ShortCode.random(random)).toList();
    }
}
