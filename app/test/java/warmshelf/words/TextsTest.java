package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Reads the files of {@code app/test/resources/templates/texts}. */
class TextsTest {
    private static final Texts TEXTS = new Texts("texts");

    @Test
    void a_section_is_one_line_with_its_values_filled_in() {
        assertThat(TEXTS.line("bread", "how", Map.of("loaves", 2)))
                .isEqualTo("Bake 2 loaves until they’re brown & crisp.");
    }

    @Test
    void a_section_ends_where_the_next_begins() {
        assertThat(TEXTS.line("bread", "title", Map.of())).isEqualTo("Bread");
        assertThat(TEXTS.line("bread", "nothing to say", Map.of())).isEmpty();
    }

    @Test
    void what_is_not_there_is_said() {
        assertThat(TEXTS.has("bread", "how")).isTrue();
        assertThat(TEXTS.has("bread", "why")).isFalse();
        assertThat(TEXTS.has("cake", "how")).isFalse();
        assertThatThrownBy(() -> TEXTS.line("bread", "why", Map.of()))
                .hasMessageContaining("texts/bread.peb has no section 'why'");
        assertThatThrownBy(() -> TEXTS.line("bread", "how", Map.of())).hasMessageContaining("loaves");
    }

    @Test
    void two_sections_of_one_name_are_a_mistake() {
        assertThatThrownBy(() -> TEXTS.line("twice", "how", Map.of()))
                .hasMessageContaining("texts/twice.peb has the section 'how' twice");
    }
}
