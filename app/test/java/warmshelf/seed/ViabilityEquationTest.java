package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.seed.StorageKind.Conditions;
import warmshelf.testing.Crops;

class ViabilityEquationTest {
    private static final ViabilityEquation PEPPER =
            ViabilityTable.of(Crops.PEPPER).orElseThrow();

    // National Taiwan University seed laboratory, http://seed.agron.ntu.edu.tw/ENG/tech/Eviability.htm: the published
    // line
    // Y = 2.8799 - 0.092168132 x, in probits and days; worked in seed-ageing.md.
    @Test
    void the_published_line_of_a_seed_laboratory_is_followed() {
        double days = 1 / 0.092168132;
        ViabilityEquation line = new ViabilityEquation("", Math.log10(days), 0, 0, 0, "", "");
        Conditions any = new Conditions(20, 10);
        double start = 0.9980;

        assertThat(Probits.of(start)).isCloseTo(2.8799, within(0.01));
        double exact = Probits.share(2.8799);
        assertThat(line.daysToLoseOneProbit(any)).isCloseTo(10.850, within(0.001));
        assertThat(line.halfLifeDays(exact, any)).isCloseTo(31.25, within(0.01));
        assertThat(line.after(exact, 14, any)).isCloseTo(0.9440, within(0.0001));
        assertThat(line.after(exact, 28, any)).isCloseTo(0.6176, within(0.0001));
    }

    // Demir et al. 2009 (pepper: KE 7.767, CW 4.670, CH 0.0329, CQ 0.000478), worked in seed-ageing.md for 95 % at the
    // start.
    @ParameterizedTest
    @CsvSource({
        "10, 25, 94.57, 155.6, 100, 0.722",
        "7, 35, 121.16, 199.3, 100, 0.794",
        "7, 20, 935.8, 1539, 365, 0.895",
        "5, 5, 21201, 34876, 365, 0.948"
    })
    void the_worked_examples_for_pepper_are_met(
            double moisture, double celsius, double sigma, double half, double days, double share) {
        Conditions kept = new Conditions(celsius, moisture);

        assertThat(PEPPER.daysToLoseOneProbit(kept)).isCloseTo(sigma, within(sigma * 1e-4));
        assertThat(PEPPER.halfLifeDays(0.95, kept)).isCloseTo(half, within(half * 5e-4));
        assertThat(PEPPER.after(0.95, days, kept)).isCloseTo(share, within(0.0006));
    }

    // Nagel and Börner 2009: maize kept half its viability for 19 years at 20.3 °C and 50.5 % humidity, unsealed; at
    // that
    // humidity maize holds some 8 to 11 % of water (common practice).
    @Test
    void the_line_for_maize_has_its_published_half_life_between_the_moistures_it_may_have_had() {
        ViabilityEquation maize = ViabilityTable.of(Crops.of("sweet-corn")).orElseThrow();

        assertThat(maize.halfLifeDays(0.95, new Conditions(20.3, 8)) / 365.25).isGreaterThan(19);
        assertThat(maize.halfLifeDays(0.95, new Conditions(20.3, 11)) / 365.25).isLessThan(19);
    }

    @Test
    void constants_written_from_memory_are_left_out() {
        assertThat(ViabilityTable.of(Crops.LETTUCE)).isEmpty();
        assertThat(ViabilityTable.of(Crops.of("onion"))).isEmpty();
    }

    @Test
    void a_cultivated_form_is_of_its_species_and_another_species_is_not() {
        assertThat(ViabilityTable.of(Crops.of("chard")).orElseThrow().species()).isEqualTo("Beta vulgaris");
        assertThat(ViabilityTable.of(Crops.HOT_PEPPER)).isEmpty();
    }

    // The equation's stated limits (seed-ageing.md): moisture 5 to 25 %; its constants were measured up to 50 °C.
    @ParameterizedTest
    @CsvSource({"60, 8", "-30, 8", "20, 40", "20, 4", "NaN, 8"})
    void conditions_outside_the_range_of_the_equation_do_not_exist(double celsius, double moisture) {
        assertThatThrownBy(() -> new Conditions(celsius, moisture)).isInstanceOf(IllegalArgumentException.class);
    }
}
