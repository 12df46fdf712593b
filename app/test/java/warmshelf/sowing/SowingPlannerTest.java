package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.testing.Crops;
import warmshelf.timeline.PlantingOut;
import warmshelf.timeline.SeasonPart;

class SowingPlannerTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final CropCatalogue CROPS = CropCatalogue.bundled();

    private final SowingPlanner planner = new SowingPlanner(CROPS, new GrowerFrost(FrostSource.bundledOnly()));

    @Test
    void up_to_the_best_temperature_a_cooler_mat_never_means_a_shorter_stay() {
        int compared = 0;
        for (Crop crop : CROPS.all()) {
            for (Method method : Method.values()) {
                DoubleToIntFunction daysAt = planner.daysAt(asking(crop, method, "55804"), TODAY, 99);
                List<Integer> days = IntStream.rangeClosed(planner.band(crop).lowC(), (int)
                                CROPS.responseOf(crop).bestC())
                        .mapToObj(daysAt::applyAsInt)
                        .toList();

                assertThat(days).as(crop.id() + " " + method).isSortedAccordingTo((one, next) -> next - one);
                compared += Math.max(0, days.size() - 1);
            }
        }
        assertThat(compared).isGreaterThan(50);
    }

    @Test
    void a_cool_mat_does_mean_a_longer_stay_for_peppers() {
        DoubleToIntFunction daysAt = planner.daysAt(asking(Crops.PEPPER, Method.CELLS, "55804"), TODAY, 99);

        assertThat(daysAt.applyAsInt(20)).isGreaterThan(daysAt.applyAsInt(28));
    }

    @Test
    void where_nothing_can_be_reckoned_the_days_given_are_taken() {
        assertThat(planner.daysAt(asking(Crops.PEPPER, Method.CELLS, "00000"), TODAY, 17)
                        .applyAsInt(26))
                .isEqualTo(17);
        assertThat(planner.daysAt(asking(Crops.PEPPER, Method.CELLS, "55804"), TODAY, 17)
                        .applyAsInt(45))
                .isEqualTo(17);
    }

    @Test
    void until_the_mat_is_known_dates_are_reckoned_at_the_usual_one_within_the_band_or_at_the_room() {
        for (Crop crop : CROPS.all()) {
            Band band = planner.band(crop);
            assertThat(band.contains(planner.reckonedC(crop, true)))
                    .as(crop.id())
                    .isTrue();
            assertThat(planner.reckonedC(crop, false)).isEqualTo(20);
        }
        assertThat(planner.reckonedC(Crops.PEPPER, true)).isEqualTo(26);
    }

    @Test
    void a_day_under_cover_decides_before_any_frost_date() {
        LocalDate cover = LocalDate.of(2027, 4, 20);
        Asking asking = new Asking(
                grower("00000"), Crops.PEPPER, null, Method.CELLS, true, 2027, SeasonPart.SPRING, 0.1, cover);

        assertThat(planner.plantingOut(asking)).contains(new PlantingOut.UnderCover(cover));
        assertThat(planner.plantingOut(asking(Crops.PEPPER, Method.CELLS, "00000")))
                .isEmpty();
    }

    private static Asking asking(Crop crop, Method method, String postcode) {
        return new Asking(grower(postcode), crop, null, method, true, 2027, SeasonPart.SPRING, 0.1, null);
    }

    private static Sowing.Grower grower(String postcode) {
        return new Sowing.Grower(new UUID(1, 1), "Tom", "US", postcode);
    }
}
