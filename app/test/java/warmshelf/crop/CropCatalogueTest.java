package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;

class CropCatalogueTest {
    private static final CropCatalogue CATALOGUE = CropCatalogue.bundled();

    @Test
    void all_77_crops_are_there() {
        assertThat(CATALOGUE.all()).hasSize(77);
        assertThat(CATALOGUE.all()).extracting(Crop::id).doesNotHaveDuplicates();
    }

    @Test
    void a_row_is_read_whole() {
        Crop pepper = CATALOGUE.get("pepper");

        assertThat(pepper.species()).isEqualTo("Capsicum annuum");
        assertThat(pepper.hardiness()).isEqualTo(Hardiness.VERY_TENDER);
        assertThat(pepper.weeksIndoorsMin()).isEqualTo(9);
        assertThat(pepper.weeksIndoorsMax()).isEqualTo(11);
        assertThat(pepper.plantOutOffsetDays()).isEqualTo(7);
        assertThat(pepper.nightMinimumC()).isEqualTo(10.0);
        assertThat(pepper.maturity()).contains(new DaysToMaturity(70, 80, Basis.TRANSPLANTING));
        assertThat(pepper.legalMinimumPercent()).isEqualTo(55);
        assertThat(pepper.seedLifeYears()).isEqualTo(2);
    }

    @Test
    void cells_in_words_and_empty_cells_stay_unknown() {
        assertThat(CATALOGUE.get("asparagus").maturity()).as("2-3 years").isEmpty();
        assertThat(CATALOGUE.get("basil").maturity()).isEmpty();
        assertThat(CATALOGUE.get("sweet-potato").depthMm()).isNull();
        assertThat(CATALOGUE.get("cabbage").nightMinimumC()).isNull();
    }

    @Test
    void an_unknown_id_is_refused() {
        assertThat(CATALOGUE.find("triffid")).isEmpty();
        assertThatThrownBy(() -> CATALOGUE.get("triffid")).hasMessageContaining("triffid");
    }

    @ParameterizedTest
    @MethodSource("crops")
    void every_crop_says_when_its_seed_comes_up_or_why_it_never_does(Crop crop) {
        TemperatureResponse response = CATALOGUE.responseOf(crop);

        assertThat(response.source()).isNotBlank();
        assertThat(response.comfortable().contains(response.bestC())).isTrue();
        assertThat(response.possible().low())
                .isLessThanOrEqualTo(response.comfortable().low());
        assertThat(response.possible().high())
                .isGreaterThanOrEqualTo(response.comfortable().high());
        if (response.source().contains("slips")) {
            assertThat(response.at(response.bestC())).isEmpty();
        } else {
            Emergence best = response.at(response.bestC()).orElseThrow();
            assertThat(best.days5()).isPositive().isLessThan(best.days());
            assertThat(best.days95()).isGreaterThan(best.days());
        }
    }

    @Test
    void only_sweet_potatoes_have_no_seed_to_come_up() {
        assertThat(CATALOGUE.all())
                .filteredOn(crop -> CATALOGUE
                        .responseOf(crop)
                        .at(CATALOGUE.responseOf(crop).bestC())
                        .isEmpty())
                .extracting(Crop::id)
                .containsExactly("sweet-potato");
    }

    @Test
    void very_hot_peppers_take_two_to_eight_weeks_not_the_week_of_sweet_ones() {
        // common practice: a month or two on the mat
        Emergence emergence = response("pepper-very-hot").at(28).orElseThrow();

        assertThat(emergence.days5()).isEqualTo(14);
        assertThat(emergence.days()).isCloseTo(28, within(1.0));
        assertThat(emergence.days95()).isEqualTo(56);
    }

    @Test
    void peppers_are_comfortable_at_the_usual_mat_temperatures() {
        // common practice: 24-27 C, 75-80 F
        CelsiusRange comfortable = response("pepper").comfortable();

        assertThat(comfortable.contains(24)).isTrue();
        assertThat(comfortable.contains(27)).isTrue();
        assertThat(comfortable.high()).isBetween(30.0, 32.0);
    }

    @Test
    void a_relatives_figures_are_called_that() {
        assertThat(response("kale").source()).contains("near relative (Cabbage)");
        assertThat(response("cabbage").source()).doesNotContain("relative");
        assertThat(response("kale").at(20)).isEqualTo(response("cabbage").at(20));
    }

    @Test
    void spinach_is_comfortable_where_most_of_it_grows_not_where_it_is_fastest() {
        // fastest at 25 C, where 28 % make normal seedlings; 91 % at 10 C (Harrington and Minges)
        assertThat(response("spinach").comfortable().high()).isLessThan(15);
    }

    @Test
    void the_comfortable_band_keeps_its_two_promises_at_both_ends() {
        TemperatureResponse tomato = response("tomato");
        CelsiusRange band = tomato.comfortable();

        // printed: 6 days at 25-30 C and 98 % at best; so at most 7.5 days and at least 88.2 %
        assertThat(tomato.at(band.low()).orElseThrow().days()).isLessThanOrEqualTo(7.5 + 1e-6);
        assertThat(tomato.at(band.low() - 0.2).orElseThrow().days()).isGreaterThan(7.5);
        assertThat(tomato.at(band.high()).orElseThrow().normalShare().orElseThrow())
                .isGreaterThanOrEqualTo(0.882 - 1e-6);
        assertThat(tomato.at(band.high() + 0.2).orElseThrow().normalShare().orElseThrow())
                .isLessThan(0.882);
    }

    static Stream<Crop> crops() {
        return CATALOGUE.all().stream();
    }

    private static TemperatureResponse response(String id) {
        return CATALOGUE.responseOf(CATALOGUE.get(id));
    }
}
