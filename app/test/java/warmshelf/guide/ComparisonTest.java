package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Standing;

class ComparisonTest {
    private static final Source SOMEBODY = Source.of("Somebody", "https://example.org/", Standing.PUBLISHED);

    @Test
    void sources_that_say_the_same_agree() {
        assertThat(verdict(inches(1, 2), inches(1, 2))).isEqualTo("The sources agree.");
    }

    @Test
    void a_single_source_has_nothing_to_agree_with() {
        assertThat(verdict(inches(1, 2))).isEqualTo("No second source to compare it with.");
    }

    @Test
    void sources_far_apart_disagree_over_the_whole_range() {
        assertThat(verdict(inches(4, 6), inches(8, 12), inches(1, 2)))
                .isEqualTo("Sources disagree: 1 to 12 in, by lamp.");
    }

    @Test
    void what_all_of_them_allow_is_said_where_there_is_such_a_thing() {
        assertThat(verdict(inches(3, 5), inches(3, 3), inches(2, 3)))
                .isEqualTo("Sources disagree: 2 to 5 in, by lamp. All of them allow 3.");
        assertThat(verdict(inches(1, 6), inches(2, 8)))
                .isEqualTo("Sources disagree: 1 to 8 in, by lamp. All of them allow 2 to 6.");
    }

    @Test
    void whether_sources_disagree_is_told_and_not_read_from_its_sentence() {
        assertThat(Comparison.told("Root", "Sources disagree: or so it sounds.", "", List.of())
                        .isDisagreement())
                .isFalse();
        assertThat(Comparison.disagreeing("Root", "a lot.", "", List.of()).isDisagreement())
                .isTrue();
        assertThat(Comparison.of("Root", "", "", List.of(inches(1, 2), inches(2, 3)))
                        .isDisagreement())
                .isTrue();
    }

    @Test
    void claims_in_words_cannot_be_reckoned() {
        Claim words = new Claim("", "as it shows", null, "as it shows", SOMEBODY);

        assertThatThrownBy(() -> Comparison.of("Root", "", "", List.of(words)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static String verdict(Claim... claims) {
        return Comparison.of("Distance", ", by lamp", "", List.of(claims)).verdict();
    }

    private static Claim inches(double low, double high) {
        Amount amount = Amount.of(low, high, "in");
        return new Claim("", amount.words(), amount, amount.words(), SOMEBODY);
    }
}
