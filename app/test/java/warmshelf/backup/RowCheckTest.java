package warmshelf.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class RowCheckTest {
    private static final Map<String, Long> BEFORE = Map.of("audit_line", 10L, "entry", 5L, "member", 3L);

    @Test
    void what_nobody_wrote_to_has_exactly_the_rows_it_had() {
        assertThat(RowCheck.agrees(BEFORE, BEFORE, BEFORE, false)).isTrue();
        assertThat(RowCheck.agrees(BEFORE, Map.of("audit_line", 10L, "entry", 5L, "member", 2L), BEFORE, false))
                .isFalse();
        assertThat(RowCheck.agrees(BEFORE, Map.of("audit_line", 10L, "entry", 5L), BEFORE, false))
                .isFalse();
    }

    @Test
    void while_others_write_what_only_grows_lies_in_between() {
        Map<String, Long> after = Map.of("audit_line", 20L, "entry", 9L, "member", 3L);

        assertThat(RowCheck.agrees(BEFORE, Map.of("audit_line", 15L, "entry", 5L, "member", 4L), after, true))
                .isTrue();
        assertThat(RowCheck.agrees(BEFORE, Map.of("audit_line", 9L, "entry", 5L, "member", 3L), after, true))
                .isFalse();
        assertThat(RowCheck.agrees(BEFORE, Map.of("audit_line", 15L, "entry", 10L, "member", 3L), after, true))
                .isFalse();
        assertThat(RowCheck.agrees(BEFORE, Map.of("audit_line", 15L, "entry", 5L), after, true))
                .isFalse();
    }
}
