package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.Crops;

class PlantCareTest {
    private static final LocalDate MAY_24 = LocalDate.of(2027, 5, 24);

    // Penn State Extension: onions are trimmed at 4 to 5 inches; Horticulture magazine: basil and snapdragons gain by
    // pinching.
    @ParameterizedTest
    @CsvSource({"onion, TRIM", "leek, TRIM", "basil, PINCH", "snapdragon, PINCH"})
    void young_plants_are_trimmed_or_pinched_before_they_harden_off(String crop, Step step) {
        Asked asked = Asked.of(Crops.of(crop), 22, MAY_24);

        assertThat(asked.step(step).ideal())
                .isAfter(asked.step(Step.FIRST_FEED).ideal())
                .isBeforeOrEqualTo(asked.step(Step.HARDEN_OFF).ideal());
    }

    // Gardener's Supply, Thinning out seedlings: as soon as the first true leaves appear one is kept in each cell, the
    // rest snipped.
    @Test
    void of_two_in_a_cell_one_is_kept_when_the_first_true_leaves_open_and_until_a_later_step_is_noted() {
        Asked asked = Asked.of(Crops.of("tomato"), 26, MAY_24);
        Asked two = asked.seedsToACell(2);
        LocalDate fed = LocalDate.of(2027, 4, 20);

        assertThat(two.step(Step.THIN).ideal())
                .isEqualTo(two.step(Step.FIRST_FEED).ideal());
        assertThat(two.step(Step.THIN).reason().words()).contains("2 seeds went into each");
        assertThat(asked.answered().step(Step.THIN)).isEmpty();
        assertThat(two.inBag().answered().step(Step.THIN)).isEmpty();
        assertThat(two.having(new Seen(
                                null,
                                null,
                                fed.minusDays(30),
                                null,
                                null,
                                fed.minusDays(20),
                                null,
                                null,
                                fed,
                                null,
                                null,
                                null,
                                null))
                        .answered()
                        .step(Step.THIN))
                .isEmpty();
    }

    // Michigan State University Extension: flowers of cucumber kin want bees, and so no cover.
    @ParameterizedTest
    @CsvSource({"cucumber", "muskmelon", "watermelon", "summer-squash", "winter-squash"})
    void the_row_cover_comes_off_weeks_after_planting_out_and_before_the_harvest(String crop) {
        Asked asked = Asked.of(Crops.of(crop), 26, MAY_24);

        assertThat(asked.step(Step.COVER_OFF).ideal())
                .isEqualTo(asked.step(Step.PLANT_OUT).ideal().plusDays(28))
                .isBeforeOrEqualTo(asked.step(Step.RIPE).ideal());
    }

    @Test
    void under_cover_no_row_cover_comes_off() {
        Timeline timeline = Asked.of(Crops.of("cucumber"), 26, new PlantingOut.UnderCover(MAY_24))
                .answered();

        assertThat(timeline.step(Step.COVER_OFF)).isEmpty();
    }

    @Test
    void a_trim_before_potting_on_leaves_the_potting_on_to_be_done() {
        LocalDate sown = LocalDate.of(2027, 2, 1);
        LocalDate trimmed = LocalDate.of(2027, 3, 5);
        Seen seen = new Seen(
                null,
                null,
                sown,
                null,
                null,
                sown.plusDays(8),
                null,
                sown.plusDays(8),
                null,
                null,
                trimmed,
                null,
                null);

        Asked onion = Asked.of(Crops.of("onion"), 22, MAY_24).having(seen).on(trimmed);

        assertThat(onion.step(Step.TRIM).done()).isEqualTo(trimmed);
        assertThat(onion.answered().step(Step.POT_ON)).isPresent();
    }

    @Test
    void most_crops_want_none_of_it_and_every_row_is_of_a_crop() {
        long some = CropCatalogue.bundled().all().stream()
                .filter(crop -> PlantCare.indoors(crop).isPresent()
                        || PlantCare.outdoors(crop).isPresent())
                .map(Crop::id)
                .count();

        assertThat(some).isEqualTo(ReferenceTable.rows("plant-care.csv").size());
        assertThat(PlantCare.isTrimmed(Crops.PEPPER)).isFalse();
    }
}
