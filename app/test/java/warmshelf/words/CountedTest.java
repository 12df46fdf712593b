package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CountedTest {
    @Test
    void one_is_said_otherwise_than_several_or_none() {
        assertThat(Counted.of(1, "seed", "seeds")).isEqualTo("1 seed");
        assertThat(Counted.of(0, "seed", "seeds")).isEqualTo("0 seeds");
        assertThat(Counted.of(1200, "seed", "seeds")).isEqualTo("1,200 seeds");
        assertThat(Counted.days(1)).isEqualTo("1 day");
        assertThat(Counted.days(9)).isEqualTo("9 days");
        assertThat(Counted.weeks(9, 11)).isEqualTo("9 to 11 weeks");
        assertThat(Counted.weeks(8, 8)).isEqualTo("8 weeks");
    }

    @Test
    void a_moved_day_says_which_way() {
        assertThat(Counted.daysMoved(1, "later", "sooner")).isEqualTo("1 day later");
        assertThat(Counted.daysMoved(-5, "later", "sooner")).isEqualTo("5 days sooner");
    }

    @Test
    void the_last_of_several_things_is_joined_by_and() {
        assertThat(Counted.all(List.of())).isEmpty();
        assertThat(Counted.all(List.of("a"))).isEqualTo("a");
        assertThat(Counted.all(List.of("a", "b"))).isEqualTo("a and b");
        assertThat(Counted.all(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    }
}
