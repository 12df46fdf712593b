package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

class WarmthFormTest {
    @ParameterizedTest
    @CsvSource({"F, 32, 113", "C, 0, 45"})
    void each_whole_degree_of_a_stated_range_comes_back_as_the_same(String unit, int least, int most) {
        Units units = Units.of(unit, "in");
        for (int degree = least; degree <= most; degree++) {
            String typed = String.valueOf(degree);
            OwnEmergence kept = WarmthForm.read(
                    new FormReader(Map.of(
                            "emergence", List.of(WarmthForm.STATED),
                            "emergenceDaysMin", List.of("5"),
                            "emergenceDaysMax", List.of("9"),
                            "emergenceLow", List.of(typed),
                            "emergenceHigh", List.of(typed))),
                    false,
                    units);

            assertThat(WarmthForm.typed(kept, units))
                    .containsEntry("emergenceLow", List.of(typed))
                    .containsEntry("emergenceHigh", List.of(typed));
        }
    }
}
