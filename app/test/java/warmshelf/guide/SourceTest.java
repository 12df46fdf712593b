package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.Standing;

class SourceTest {
    @Test
    void only_pages_that_are_sent_encrypted_are_led_to() {
        assertThat(Source.of("Extension", "https://example.org/a", Standing.PUBLISHED)
                        .url())
                .isEqualTo("https://example.org/a");
        assertThat(Source.of("Extension", "http://example.org/a", Standing.PUBLISHED)
                        .url())
                .isEmpty();
        assertThat(Source.of("Extension", "javascript:alert(1)", Standing.PUBLISHED)
                        .url())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"published,PUBLISHED", "low,LOW_AUTHORITY", "practice,COMMON_PRACTICE", "memory,FROM_MEMORY"})
    void the_tables_codes_are_standings(String code, Standing standing) {
        assertThat(Standing.named(code)).isEqualTo(standing);
    }

    @Test
    void a_title_decides_nothing() {
        assertThat(Source.of("Science explainer", "", Standing.PUBLISHED).standing())
                .isEqualTo(Standing.PUBLISHED);
        assertThatThrownBy(() -> Standing.named("low authority")).hasMessageContaining("low authority");
    }

    @Test
    void the_reference_marks_pages_that_nobody_answers_for() {
        assertThat(PracticeTable.bundled().rows())
                .filteredOn(row -> row.source().standing() == Standing.LOW_AUTHORITY)
                .extracting(row -> row.source().title())
                .anyMatch(title -> title.startsWith("Science explainer"))
                .anyMatch(title -> title.startsWith("Grower trial"));
    }
}
