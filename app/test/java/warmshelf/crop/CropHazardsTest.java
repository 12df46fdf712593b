package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.guide.Advice;
import warmshelf.timeline.Caution;
import warmshelf.timeline.Step;

/** What of each crop can hurt, as lists of poison centres, veterinarians and extension services have it. */
class CropHazardsTest {
    private static final CropCatalogue CROPS = CropCatalogue.bundled();

    static List<Crop> crops() {
        return CROPS.all();
    }

    @ParameterizedTest
    @MethodSource("crops")
    void each_crop_was_looked_up_and_names_who_says_so(Crop crop) {
        assertThat(CROPS.hazardClaims(crop.id())).isNotEmpty().allSatisfy(claim -> {
            assertThat(claim.says()).isNotBlank();
            assertThat(claim.source()).isNotBlank();
            assertThat(claim.standing() != Standing.PUBLISHED
                            || claim.sourceUrl().startsWith("http"))
                    .as(claim.source())
                    .isTrue();
        });
    }

    @Test
    void the_table_names_no_crop_that_there_is_not() {
        assertThat(crops())
                .extracting(Crop::id)
                .containsAll(HazardClaim.bundled().keySet());
    }

    // New York City Health Department: 'Foxglove', 'Periwinkle', 'Tobacco' and 'Tomato Vines' are poisonous to people.
    @Test
    void what_the_city_of_new_york_calls_poisonous_is_said_to_be() {
        assertThat(Stream.of("foxglove", "vinca", "flowering-tobacco"))
                .allSatisfy(id -> assertThat(hazards(id)).contains(CropHazard.POISONOUS));
        assertThat(hazards("tomato")).contains(CropHazard.PARTS).doesNotContain(CropHazard.POISONOUS);
    }

    // Maryland Poison Center 2012, 'Common Non-Poisonous Plants'.
    @Test
    void what_maryland_calls_harmless_to_people_is_not_said_to_poison_them() {
        assertThat(Stream.of("coleus", "geranium", "impatiens", "marigold", "petunia"))
                .allSatisfy(id -> assertThat(hazards(id)).doesNotContain(CropHazard.POISONOUS, CropHazard.PARTS));
    }

    // ASPCA Animal Poison Control, the pages of these plants ('Toxic to Dogs, Toxic to Cats' or 'Non-Toxic').
    @Test
    void pets_are_warned_of_as_their_poison_centre_does() {
        assertThat(Stream.of(
                        "tomato",
                        "vinca",
                        "flowering-tobacco",
                        "parsley",
                        "oregano",
                        "lavender",
                        "begonia",
                        "geranium",
                        "foxglove"))
                .allSatisfy(id -> assertThat(hazards(id)).as(id).contains(CropHazard.PETS));
        assertThat(Stream.of(
                        "muskmelon",
                        "cucumber",
                        "snapdragon",
                        "summer-squash",
                        "basil",
                        "dill",
                        "cilantro",
                        "chard",
                        "beet",
                        "thyme",
                        "sage",
                        "rosemary",
                        "china-aster",
                        "celosia",
                        "cornflower",
                        "globe-amaranth",
                        "impatiens",
                        "zinnia",
                        "nasturtium",
                        "calendula"))
                .allSatisfy(id -> assertThat(hazards(id)).as(id).doesNotContain(CropHazard.PETS));
    }

    // Massey University, Poisonous plants: B. oleracea 'includes cabbage, Brussel sprouts, kale, broccoli, cauliflower
    // and
    // kohlrabi', B. rapa 'Chinese cabbage and pak choi'.
    @Test
    void cabbages_are_kept_from_stock() {
        assertThat(crops())
                .filteredOn(crop -> crop.species().startsWith("Brassica"))
                .hasSize(9)
                .allSatisfy(crop -> assertThat(crop.hazards()).contains(CropHazard.GRAZING));
    }

    // Families as botany has them; dvm360 of onions, garlic, chives and leeks; the Botanical Dermatology Database of
    // the
    // carrot family; McCracken County Master Gardener of the nightshades.
    @ParameterizedTest
    @CsvSource({
        "Allium, 3, PETS",
        "Solanum, 2, PARTS",
        "Capsicum, 2, PARTS",
        "Physalis, 1, PARTS",
        "Apium, 2, SUN",
        "Petroselinum, 1, SUN",
        "Anethum, 1, SUN",
        "Foeniculum, 1, SUN",
        "Cucurbita, 2, BITTER",
        "Lactuca, 2, SENSITISES",
        "Cichorium, 2, SENSITISES",
        "Catharanthus, 1, POISONOUS"
    })
    void a_genus_shares_its_hazard(String genus, int crops, CropHazard hazard) {
        assertThat(crops())
                .filteredOn(crop -> crop.species().startsWith(genus))
                .hasSize(crops)
                .allSatisfy(crop -> assertThat(crop.hazards()).contains(hazard));
    }

    // Nebraska Regional Poison Center: capsaicin is what burns, and sweet peppers have none.
    @Test
    void sweet_peppers_are_not_said_to_burn() {
        assertThat(hazards("pepper")).contains(CropHazard.HOT_KINDS).doesNotContain(CropHazard.BURNS);
        assertThat(hazards("pepper-very-hot")).contains(CropHazard.BURNS);
    }

    @ParameterizedTest
    @CsvSource({
        "tomato, SOW, ''",
        "tomato, POT_ON, PARTS",
        "tomato, PLANT_OUT, PARTS PETS GRAZING",
        "pepper, SOW, HOT_KINDS",
        "vinca, SOW, POISONOUS",
        "vinca, MOVE_TO_CELLS, POISONOUS",
        "vinca, PLANT_OUT, POISONOUS PETS GRAZING",
        "celery, POT_ON, ''",
        "celery, PLANT_OUT, SUN",
        "winter-squash, SOW, BITTER",
        "winter-squash, FIRST_LOOK, ''",
        "winter-squash, RIPE, BITTER",
        "zinnia, POT_ON, SENSITISES",
        "basil, PLANT_OUT, ''"
    })
    void only_what_is_handled_is_warned_of(String id, Step step, String cautions) {
        assertThat(Caution.of(hazards(id), step))
                .extracting(Caution::name)
                .containsExactlyInAnyOrder(cautions.isEmpty() ? new String[0] : cautions.split(" "));
    }

    @ParameterizedTest
    @EnumSource
    void each_hazard_has_a_line_short_enough_for_a_phone(CropHazard hazard) {
        Set<Caution> all = new HashSet<>();
        Arrays.stream(Step.values()).forEach(step -> all.addAll(Caution.of(Set.of(hazard), step)));

        assertThat(all).hasSize(1).allSatisfy(caution -> {
            assertThat(caution.standsOpen()).isTrue();
            assertThat(caution.brief().length()).isLessThanOrEqualTo(80);
        });
    }

    @Test
    void the_onset_of_legionella_is_the_one_that_the_cdc_gives() {
        // CDC: 'Symptoms usually begin 2 to 14 days after being exposed to the bacteria, but it can take longer.'
        assertThat(Advice.fixed("cautions/compost-dust", "whole")).contains("2 to 14 days");
    }

    private static Set<CropHazard> hazards(String id) {
        return CROPS.get(id).hazards();
    }
}
