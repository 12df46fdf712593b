package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OutputTest {
    @Test
    void fields_keep_their_order_dates_are_iso_and_missing_figures_are_null() {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("zinnia", LocalDate.of(2027, 3, 1));
        answer.put("asparagus", null);

        assertThat(Output.text(answer).replaceAll("\\s", ""))
                .isEqualTo("{\"zinnia\":\"2027-03-01\",\"asparagus\":null}");
    }
}
