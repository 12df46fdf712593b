package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Light, heat and the bag: what a crop's seed needs and does not bear until it is up. */
class SeedNeedsTest {
    private static final CropCatalogue CROPS = CropCatalogue.bundled();

    /**
     * Letter L of two tables of Iowa State University Extension (2017 and 2023): require light for germination; thyme and oregano
     * by the Master Gardeners of Washington County, Minnesota; sweet alyssum by Missouri G6570.
     */
    @Test
    void seed_needs_light_where_extension_tables_say_so() {
        Set<String> tables = Set.of(
                "ageratum",
                "snapdragon",
                "begonia",
                "lisianthus",
                "impatiens",
                "flowering-tobacco",
                "petunia",
                "moss-rose",
                "salvia",
                "coleus",
                "dill",
                "thyme",
                "oregano",
                "sweet-alyssum");

        assertThat(needLight()).containsAll(tables).hasSize(20);
        // Iowa 2017 and 2023 have these covered
        assertThat(needLight())
                .doesNotContain(
                        "tomato", "pepper", "pepper-very-hot", "eggplant", "zinnia", "marigold", "pansy", "celosia");
    }

    private static Set<String> needLight() {
        return CROPS.all().stream()
                .filter(crop -> crop.light().isNeeded())
                .map(Crop::id)
                .collect(Collectors.toSet());
    }

    /**
     * Utah State Univ. Extension, transplant production table: lettuce is dormant above about 80 °F, spinach comes up less above
     * 70 °F; Iowa 2017: cabbage, kale and onion 65 to 70 °F, tomato and pepper 70 to 75 °F with bottom heat in Delaware's bands.
     */
    @ParameterizedTest
    @CsvSource({
        "lettuce,NO_MAT",
        "leaf-lettuce,NO_MAT",
        "spinach,NO_MAT",
        "celery,ROOM_IS_ENOUGH",
        "cabbage,ROOM_IS_ENOUGH",
        "kale,ROOM_IS_ENOUGH",
        "onion,ROOM_IS_ENOUGH",
        "pansy,ROOM_IS_ENOUGH",
        "stock,ROOM_IS_ENOUGH",
        "tomato,MAT",
        "pepper,MAT",
        "pepper-very-hot,MAT",
        "petunia,MAT",
        "basil,MAT"
    })
    void crops_of_the_cool_season_need_no_mat(String id, HeatNeed need) {
        Crop crop = CROPS.get(id);

        assertThat(HeatNeed.of(crop, CROPS.responseOf(crop))).isEqualTo(need);
    }

    /** Iowa State Univ. Extension 2017 has them come up at 65 to 70 °F (cabbage, kale) and 70 to 75 °F (onion, parsley): none at 75 and more. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "cabbage",
                "broccoli",
                "cauliflower",
                "kale",
                "kohlrabi",
                "onion",
                "leek",
                "celery",
                "parsley",
                "endive",
                "beet",
                "chard",
                "pansy",
                "stock"
            })
    void crops_of_the_cool_season_are_sent_to_no_mat_of_75_degrees_fahrenheit(String id) {
        CelsiusRange mat = HeatNeed.onMat(CROPS.get(id), CROPS.responseOf(CROPS.get(id)));

        assertThat(mat.contains(HeatNeed.ROOM_C)).isTrue();
        assertThat(mat.high() * 1.8 + 32).isLessThan(75);
        assertThat(mat.low() * 1.8 + 32).isGreaterThan(64);
    }

    @Test
    void a_coordinators_own_cool_crop_is_laid_where_that_coordinator_says_it_comes_up() {
        CelsiusRange said = new CelsiusRange(18, 25);

        assertThat(HeatNeed.onMat(CROPS.get("kale"), new StatedRangeResponse(5, 10, said, "ours", true)))
                .isEqualTo(said);
        assertThat(HeatNeed.onMat(CROPS.get("kale"), new StatedRangeResponse(5, 10, said, "theirs", false)))
                .isEqualTo(new CelsiusRange(18, 23));
    }

    @Test
    void crops_of_the_warm_season_are_sent_where_they_come_up_best() {
        for (String id : List.of("tomato", "pepper", "cucumber", "basil", "petunia")) {
            assertThat(HeatNeed.onMat(CROPS.get(id), CROPS.responseOf(CROPS.get(id))))
                    .isEqualTo(CROPS.responseOf(CROPS.get(id)).comfortable());
        }
    }

    /** Seeds to the ounce: begonia about a million, petunia 250,000 to 300,000, tomato 8,000 to 12,000 (Neil Sperry). */
    @Test
    void neither_dust_nor_seed_whose_roots_bear_no_moving_is_sprouted_in_a_bag() {
        assertThat(List.of("begonia", "petunia", "lisianthus"))
                .allSatisfy(id -> assertThat(BagFit.of(CROPS.get(id))).isEqualTo(BagFit.TOO_FINE));
        assertThat(List.of("fennel", "dill", "zinnia", "nasturtium"))
                .allSatisfy(id -> assertThat(BagFit.of(CROPS.get(id))).isEqualTo(BagFit.ROOTS_STAY));
        assertThat(List.of("tomato", "pepper", "pepper-very-hot", "celery", "lettuce", "marigold"))
                .allSatisfy(id -> assertThat(BagFit.of(CROPS.get(id))).isEqualTo(BagFit.FITS));
        // what is too fine to pick up is never covered
        CROPS.all().stream()
                .filter(crop -> BagFit.of(crop) == BagFit.TOO_FINE)
                .forEach(crop -> assertThat(crop.depthMm()).as(crop.id()).isZero());
    }
}
