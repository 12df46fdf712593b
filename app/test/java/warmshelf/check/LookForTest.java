package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.words.Units;

class LookForTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 3, 22);

    @ParameterizedTest
    @EnumSource(CheckKind.class)
    void every_check_says_what_to_look_for_and_what_to_do_then(CheckKind kind) {
        for (Cases begun : new Cases[] {Cases.bag(), Cases.cells()}) {
            Subject subject = begun.onMat(SOWN, SOWN.plusDays(40)).sown().on(SOWN);

            assertThat(LookFor.look(kind, subject, Units.METRIC)).isNotBlank().doesNotContain("{");
            assertThat(LookFor.ifSeen(kind, subject, Units.METRIC))
                    .isNotBlank()
                    .endsWith(".")
                    .doesNotContain("{");
        }
    }
}
