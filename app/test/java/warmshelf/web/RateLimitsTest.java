package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestGroup;

class RateLimitsTest {
    private final MutableClock clock = new MutableClock(TestGroup.MORNING);
    private final RateLimits limits = new RateLimits(clock);

    @Test
    void when_the_tries_are_used_up_the_sentence_says_how_long_to_wait() {
        take("a", 3);

        assertThatThrownBy(() -> take("a", 1))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.status().getCode()).isEqualTo(429))
                .hasMessage("That was tried too often. Please wait 2 minutes, then try again.");
    }

    @Test
    void one_try_comes_back_each_two_minutes() {
        take("a", 3);
        clock.advance(Duration.ofMinutes(2));

        assertThatCode(() -> take("a", 1)).doesNotThrowAnyException();
        assertThatThrownBy(() -> take("a", 1)).isInstanceOf(Refusal.class);
    }

    @Test
    void one_name_used_up_leaves_others_their_tries() {
        take("a", 3);

        assertThatCode(() -> take("b", 3)).doesNotThrowAnyException();
    }

    @Test
    void only_the_last_few_thousand_are_remembered() {
        take("first", 3);
        for (int i = 0; i < 10_000; i++) {
            take("other " + i, 1);
        }

        assertThatCode(() -> take("first", 3)).doesNotThrowAnyException();
    }

    private void take(String key, int times) {
        for (int i = 0; i < times; i++) {
            limits.take(key, 3, Duration.ofMinutes(2));
        }
    }
}
