package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.Crops;

class HowToTestTest {
    private static final CropCatalogue CROPS = CropCatalogue.bundled();

    // The rules for testing seeds, 7 CFR 201.58, table 2: cucumber 20-30 °C and 7 days, onion 20 °C and 10, spinach 15
    // °C and 21,
    // celery 15-25 °C and 21, parsley 20-30 °C and 28 (from memory, to be verified).
    @ParameterizedTest
    @CsvSource({"cucumber,20,30,7", "onion,20,20,10", "spinach,15,15,21", "celery,15,25,21", "parsley,20,30,28"})
    void seed_is_tested_as_seed_laboratories_have_to(String crop, double night, double day, int days) {
        HowToTest test = howTo(crop);

        assertThat(test.nightC()).isEqualTo(night);
        assertThat(test.dayC()).isEqualTo(day);
        assertThat(test.days()).isEqualTo(days);
        assertThat(test.rules()).contains("7 CFR 201.58");
        assertThat(test.alternates()).isEqualTo(day > night);
    }

    @Test
    void what_the_rules_do_not_have_is_tested_where_it_comes_up_best() {
        HowToTest zinnia = howTo("zinnia");

        assertThat(zinnia.rules()).isEmpty();
        assertThat(zinnia.alternates()).isFalse();
        assertThat(zinnia.dayC()).isEqualTo(CROPS.responseOf(Crops.of("zinnia")).bestC());
    }

    @Test
    void no_seed_of_the_rules_is_told_to_lie_warmer_than_30_degrees() {
        int byRules = 0;
        for (Crop crop : CROPS.fromSeed()) {
            HowToTest test = HowToTest.of(crop, CROPS.responseOf(crop)).orElseThrow();
            if (!test.rules().isEmpty()) {
                assertThat(test.dayC()).as(crop.id()).isBetween(15.0, 30.0);
                byRules++;
            }
        }
        assertThat(byRules)
                .isEqualTo(ReferenceTable.rows("germination-test.csv").size());
    }

    @Test
    void where_no_table_tells_the_days_nothing_is_said() {
        Crop sweetPotato = Crops.of("sweet-potato");

        assertThat(HowToTest.of(sweetPotato, CROPS.responseOf(sweetPotato))).isEmpty();
    }

    private static HowToTest howTo(String crop) {
        return HowToTest.of(Crops.of(crop), CROPS.responseOf(Crops.of(crop))).orElseThrow();
    }
}
