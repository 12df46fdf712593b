package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SourceTest {
    @Test
    void only_pages_that_are_sent_encrypted_are_led_to() {
        assertThat(Source.of("Extension", "https://example.org/a", "").url()).isEqualTo("https://example.org/a");
        assertThat(Source.of("Extension", "http://example.org/a", "").url()).isEmpty();
        assertThat(Source.of("Extension", "javascript:alert(1)", "").url()).isEmpty();
    }

    @Test
    void the_tables_marks_become_a_standing() {
        assertThat(Source.of("common practice", "", "").standing()).isEqualTo(Standing.COMMON_PRACTICE);
        assertThat(Source.of("from memory", "", "17-22 W").standing()).isEqualTo(Standing.FROM_MEMORY);
        assertThat(Source.of("Somebody", "", "room 70 F; low authority source").standing())
                .isEqualTo(Standing.LOW_AUTHORITY);
        assertThat(Source.of("Science explainer: How close should lights be", "", "")
                        .standing())
                .isEqualTo(Standing.LOW_AUTHORITY);
        assertThat(Source.of("Grower trial 2: peroxide on paper", "", "").standing())
                .isEqualTo(Standing.LOW_AUTHORITY);
        assertThat(Source.of("Univ. of Missouri Extension news", "", "").standing())
                .isEqualTo(Standing.PUBLISHED);
    }
}
