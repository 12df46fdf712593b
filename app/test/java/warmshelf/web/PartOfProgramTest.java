package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartOfProgramTest {
    @ParameterizedTest
    @CsvSource({
        "/today, TODAY",
        "/sowings/07/entry, MINE",
        "/frost/garden, MINE",
        "/plans/fairness, MINE",
        "/plans/out-of-service, PLAN",
        "/ask/plan, ASK",
        "/asked, NONE",
        "/stays/07, RACKS",
        "/crops/pepper, SEED",
        "/duty/mine, GROUP",
        "/sign-in, NONE"
    })
    void a_page_belongs_to_the_part_under_which_it_is_found(String path, PartOfProgram part) {
        assertThat(PartOfProgram.of(path)).isEqualTo(part);
    }
}
