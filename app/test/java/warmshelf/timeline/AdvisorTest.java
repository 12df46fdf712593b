package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.testing.Crops;

class AdvisorTest {
    private static final Measures METRIC = new Measures() {
        @Override
        public String temperature(double celsius) {
            return Math.round(celsius) + " °C";
        }

        @Override
        public String temperatureRange(double lowC, double highC) {
            return Math.round(lowC) + "–" + temperature(highC);
        }

        @Override
        public String length(double millimetres) {
            return Math.round(millimetres) + " mm";
        }
    };

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
                .anyMatch(caution -> caution.contains("gloves"))
                .noneMatch(c -> c.contains("eroxide"));
    }

    @Test
    void seed_of_very_hot_peppers_asks_for_gloves() {
        assertThat(advisor(Crops.HOT_PEPPER, Method.CELLS, false).on(Step.SOW).cautions())
                .anyMatch(caution -> caution.contains("gloves") && caution.contains("face"));
    }

    @Test
    void poisonous_plants_are_named_as_such() {
        assertThat(advisor(Crops.of("foxglove"), Method.CELLS, false)
                        .on(Step.SOW)
                        .cautions())
                .anyMatch(caution -> caution.contains("poisonous"));
    }

    @Test
    void compost_asks_for_damping_and_a_mask() {
        assertThat(advisor(Crops.TOMATO, Method.CELLS, false).on(Step.POT_ON).cautions())
                .anyMatch(caution -> caution.contains("Legionella") && caution.contains("mask"));
    }

    @Test
    void lights_over_head_ask_for_a_step_stool_and_a_safe_outlet() {
        assertThat(advisor(Crops.TOMATO, Method.CELLS, false).on(Step.LIGHT).cautions())
                .anyMatch(caution -> caution.contains("step stool"))
                .anyMatch(caution -> caution.contains("RCD") && caution.contains("electrician"));
    }

    // Common practice: peppers a quarter inch (6 mm) deep.
    @Test
    void peppers_are_sown_six_millimetres_deep() {
        assertThat(advisor(Crops.PEPPER, Method.CELLS, false).on(Step.SOW).how())
                .contains("6 mm deep");
    }

    @Test
    void seed_that_needs_light_stays_on_the_surface() {
        assertThat(advisor(Crops.LETTUCE, Method.CELLS, false).on(Step.SOW).how())
                .contains("onto the surface");
    }

    private static Advisor advisor(Crop crop, Method method, boolean treated) {
        return new Advisor(crop, method, new CelsiusRange(24, 30), treated, METRIC);
    }
}
