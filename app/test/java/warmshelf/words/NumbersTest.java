package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void figures_are_written_without_needless_noughts() {
        assertThat(Numbers.plain(26)).isEqualTo("26");
        assertThat(Numbers.plain(27.25)).isEqualTo("27.25");
        assertThat(Numbers.plain(100)).isEqualTo("100");
        assertThat(Numbers.plain(-0.0)).isEqualTo("0");
        assertThat(Numbers.oneDecimal(9)).isEqualTo("9.0");
        assertThat(Numbers.oneDecimalAtMost(9)).isEqualTo("9");
        assertThat(Numbers.oneDecimalAtMost(8.46)).isEqualTo("8.5");
    }

    @Test
    void halves_go_up() {
        assertThat(Numbers.tenths(0.25)).isEqualTo(0.3);
        assertThat(Numbers.tenths(-0.25)).isEqualTo(-0.2);
        assertThat(Numbers.hundredths(0.125)).isEqualTo(0.13);
    }
}
