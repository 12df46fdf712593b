package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.Crops;

class HowToTestTest {
    private static final CropCatalogue CROPS = CropCatalogue.bundled();

    // Harrington and Minges (1954), as reprinted by university extensions: parsley takes longer than tomato.
    @Test
    void each_crop_is_tested_at_its_own_warmth_for_its_own_days() {
        HowToTest lettuce = howTo("lettuce");
        HowToTest pepper = howTo("pepper");

        assertThat(lettuce.celsius()).isLessThan(pepper.celsius());
        assertThat(howTo("parsley").days()).isGreaterThan(howTo("tomato").days());
        assertThat(lettuce.days()).isBetween(2, 10);
    }

    @Test
    void where_no_table_tells_the_days_nothing_is_said() {
        assertThat(HowToTest.of(CROPS.responseOf(Crops.of("sweet-potato")))).isEmpty();
    }

    private static HowToTest howTo(String crop) {
        return HowToTest.of(CROPS.responseOf(Crops.of(crop))).orElseThrow();
    }
}
