package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;
import warmshelf.crop.Method;
import warmshelf.testing.Crops;
import warmshelf.testing.OwnCrops;
import warmshelf.words.Units;

class AdvisorTest {
    @ParameterizedTest
    @EnumSource(Step.class)
    void every_step_says_how_and_from_where(Step step) {
        for (Method method : Method.values()) {
            StepAdvice advice = advisor(Crops.PEPPER, method, false).on(step);

            assertThat(advice.step()).isEqualTo(step);
            assertThat(advice.how()).isNotBlank().endsWith(".");
            assertThat(advice.source()).isNotBlank();
        }
    }

    @Test
    void peroxide_is_optional_thinly_proven_and_harmful_when_strong() {
        assertThat(advisor(Crops.PEPPER, Method.BAG, false).on(Step.SOAK).cautions())
                .extracting(Caution::sentence)
                .anyMatch(caution -> caution.contains("optional")
                        && caution.contains("thin")
                        && caution.contains("harm")
                        && caution.contains("poison centre"));
    }

    @Test
    void treated_seed_is_never_soaked() {
        StepAdvice soak = advisor(Crops.PEPPER, Method.BAG, true).on(Step.SOAK);

        assertThat(soak.how()).startsWith("Leave this step out");
        assertThat(soak.cautions())
                .extracting(Caution::sentence)
                .anyMatch(caution -> caution.contains("gloves"))
                .noneMatch(c -> c.contains("eroxide"));
    }

    // Nebraska Regional Poison Center: gloves for hot peppers, no touching the face.
    @ParameterizedTest
    @ValueSource(strings = {"pepper", "pepper-very-hot"})
    void seed_of_hot_peppers_asks_for_gloves(String id) {
        assertThat(advisor(Crops.of(id), Method.CELLS, false).on(Step.SOW).cautions())
                .containsAnyOf(Caution.BURNS, Caution.HOT_KINDS)
                .extracting(Caution::sentence)
                .anyMatch(caution -> caution.contains("gloves") && caution.contains("face"));
    }

    // University of California AXT-22 names foxglove, the school short list flowering tobacco.
    @ParameterizedTest
    @ValueSource(strings = {"foxglove", "flowering-tobacco"})
    void poisonous_plants_are_named_as_such_wherever_they_are_handled(String id) {
        Advisor advisor = advisor(Crops.of(id), Method.CELLS, false);

        assertThat(List.of(Step.SOW, Step.FIRST_LOOK, Step.POT_ON, Step.HARDEN_OFF, Step.PLANT_OUT, Step.RIPE))
                .allSatisfy(step -> assertThat(advisor.on(step).cautions()).contains(Caution.POISONOUS));
    }

    @Test
    void a_hazard_is_a_code_and_never_a_word_of_what_is_written() {
        Crop said = OwnCrops.saying("poisonous: gloves, label; burns skin and eyes; treated", Set.of());
        Crop ticked = OwnCrops.saying("harmless", Set.of(CropHazard.POISONOUS, CropHazard.BURNS));

        assertThat(advisor(said, Method.CELLS, false).on(Step.SOW).cautions())
                .containsExactly(Caution.COMPOST_DUST, Caution.ELECTRICITY);
        assertThat(advisor(ticked, Method.CELLS, false).on(Step.SOW).cautions())
                .contains(Caution.POISONOUS, Caution.BURNS);
    }

    @Test
    void skin_eyes_poison_and_electricity_stand_open() {
        assertThat(Stream.of(Caution.values()).filter(Caution::standsOpen))
                .containsExactlyInAnyOrder(
                        Caution.TREATED_SEED,
                        Caution.BURNS,
                        Caution.HOT_KINDS,
                        Caution.POISONOUS,
                        Caution.PARTS,
                        Caution.SUN,
                        Caution.IRRITATES,
                        Caution.SENSITISES,
                        Caution.PETS,
                        Caution.GRAZING,
                        Caution.BITTER,
                        Caution.ELECTRICITY,
                        Caution.PEROXIDE);
    }

    @Test
    void compost_asks_for_damping_and_a_mask() {
        assertThat(advisor(Crops.TOMATO, Method.CELLS, false).on(Step.POT_ON).cautions())
                .extracting(Caution::sentence)
                .anyMatch(caution -> caution.contains("Legionella") && caution.contains("mask"));
    }

    @Test
    void lights_over_head_ask_for_a_step_stool_and_a_safe_outlet() {
        assertThat(advisor(Crops.TOMATO, Method.CELLS, false).on(Step.LIGHT).cautions())
                .extracting(Caution::sentence)
                .anyMatch(caution -> caution.contains("step stool"))
                .anyMatch(caution -> caution.contains("RCD") && caution.contains("electrician"));
    }

    // Common practice: peppers a quarter inch (6 mm) deep.
    @Test
    void peppers_are_sown_six_millimetres_deep() {
        assertThat(advisor(Crops.PEPPER, Method.CELLS, false).on(Step.SOW).how())
                .contains("0.6 cm deep");
    }

    @Test
    void seed_that_needs_light_stays_on_the_surface() {
        assertThat(advisor(Crops.LETTUCE, Method.CELLS, false).on(Step.SOW).how())
                .contains("onto the surface");
    }

    private static Advisor advisor(Crop crop, Method method, boolean treated) {
        return new Advisor(crop, method, new CelsiusRange(24, 30), crop.hazardsOf(treated), Units.METRIC);
    }
}
