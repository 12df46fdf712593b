package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.OwnCrops;
import warmshelf.words.Units;

class CropAtStepTest {
    private static final CropCatalogue CROPS = CropCatalogue.bundled();

    @Test
    void seed_of_lettuce_is_told_its_warmth_depth_light_and_what_puts_it_to_sleep() {
        assertThat(facts(Topic.SOW, "lettuce", Articles.US))
                .extracting(CropAtStep.Fact::name)
                .containsExactly("Comfortable", "Depth", "Light", "Mat", "Before sowing");
        assertThat(words("Mat", "lettuce", Articles.US)).isEqualTo("none: room temperature, about 68 °F or cooler");
        assertThat(words("Depth", "lettuce", Articles.US))
                .isEqualTo("¼ in, or on the surface under a dusting of vermiculite, for the light");
        assertThat(words("Light", "lettuce", Articles.US))
                .isEqualTo("needs light to come up: a lamp or daylight, from sowing on");
        assertThat(words("Before sowing", "lettuce", Articles.US))
                .isEqualTo("Above about 80 °F it falls asleep instead of coming up: keep it cooler.");
        assertThat(words("Before sowing", "lettuce", Articles.METRIC)).contains("Above about 27 °C");
    }

    @Test
    void dust_stays_on_the_surface_and_seed_of_the_dark_is_covered() {
        assertThat(words("Depth", "petunia", Articles.METRIC)).isEqualTo("on the surface (common practice)");
        assertThat(words("Light", "pansy", Articles.METRIC)).isEqualTo("keep it dark until it is up: cover it well");
    }

    @Test
    void slips_have_no_depth_and_no_days() {
        assertThat(facts(Topic.SOW, "sweet-potato", Articles.US))
                .extracting(CropAtStep.Fact::name)
                .doesNotContain("Depth");
        assertThat(words("Comfortable", "sweet-potato", Articles.US)).doesNotContain("half is up");
    }

    @Test
    void later_steps_are_told_the_weeks_indoors_and_the_coldest_night() {
        assertThat(facts(Topic.PLANT_OUT, "tomato", Articles.METRIC))
                .containsExactly(
                        new CropAtStep.Fact("Indoors", "5 to 7 weeks before planting out"),
                        new CropAtStep.Fact("Nights, to go out", "above 10 °C"));
    }

    @Test
    void what_a_coordinator_wrote_of_the_treatment_stands_as_it_is() {
        Crop written = OwnCrops.saying("sing to it", Set.of());

        CropAtStep facts = CropAtStep.of(Topic.SOW, written, CROPS.responseOf(CROPS.get("tomato")), Articles.US);

        assertThat(facts.facts()).contains(new CropAtStep.Fact("Before sowing", "sing to it"));
        assertThat(facts.facts()).extracting(CropAtStep.Fact::name).doesNotContain("Light");
    }

    private static String words(String name, String crop, Units units) {
        return facts(Topic.SOW, crop, units).stream()
                .filter(fact -> fact.name().equals(name))
                .findFirst()
                .orElseThrow()
                .words();
    }

    private static List<CropAtStep.Fact> facts(Topic topic, String id, Units units) {
        Crop crop = CROPS.get(id);
        return CropAtStep.of(topic, crop, CROPS.responseOf(crop), units).facts();
    }
}
