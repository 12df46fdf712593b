package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.ReferenceTable;
import warmshelf.crop.CropCatalogue;
import warmshelf.guide.PracticeDays;

/** The first feed waits for the first true leaves, and those of slow seedlings come later. */
class FirstLeavesTest {
    private static final LocalDate MAY_24 = LocalDate.of(2027, 5, 24);

    @ParameterizedTest
    @CsvSource({
        "tomato, first true leaves after coming up",
        "zinnia, first true leaves after coming up",
        "celery, first true leaves of slow seedlings",
        "begonia, first true leaves of slow seedlings"
    })
    void feed_comes_as_many_days_after_coming_up_as_the_row_of_its_kind_says(String crop, String row) {
        Asked asked = Asked.of(CropCatalogue.bundled().get(crop), 21, MAY_24);

        long days = ChronoUnit.DAYS.between(
                asked.step(Step.LIGHT).ideal(), asked.step(Step.FIRST_FEED).ideal());

        PracticeDays said = PracticeDays.of("feed", row);
        assertThat(days).isBetween((long) said.least(), (long) said.most());
        assertThat(asked.step(Step.FIRST_FEED).why())
                .contains("%d to %d days after coming up".formatted(said.least(), said.most()));
    }

    @Test
    void each_slow_crop_is_one_that_there_is() {
        assertThat(ReferenceTable.rows("slow-seedlings.csv"))
                .allSatisfy(row -> assertThat(CropCatalogue.bundled().find(row.get("crop_id")))
                        .as(row.get("crop_id"))
                        .isPresent());
    }
}
