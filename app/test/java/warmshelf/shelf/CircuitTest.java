package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CircuitTest {
    // The usual figures for continuous loads at 120 V: db/reference/safety.csv, row 'Continuous load' (NFPA 70,
    // 210.20).
    @ParameterizedTest
    @CsvSource({"15,120,1440", "20,120,1920"})
    void a_circuit_is_planned_for_eighty_percent_of_its_rating(double amps, int volts, int watts) {
        assertThat(new Circuit(amps, volts).continuousWatts()).isEqualTo(watts);
    }

    @Test
    void a_circuit_without_amps_is_refused() {
        assertThatThrownBy(() -> new Circuit(0, 120)).hasMessageContaining("above 0");
    }

    @Test
    void a_site_at_its_limit_is_not_overloaded() {
        assertThat(siteWithLights(1440).isOverloaded()).isFalse();
        assertThat(siteWithLights(1440).loadPercent()).isEqualTo(100);
    }

    @Test
    void one_watt_more_is_too_much_and_the_sentence_says_so() {
        Site site = siteWithLights(1441);

        assertThat(site.isOverloaded()).isTrue();
        assertThat(site.loadPercent()).isGreaterThan(100);
        assertThat(site.loadWords()).contains("1,441 W", "1,440 W", "1,800 W", "too much");
    }

    @Test
    void mats_and_lights_count_together() {
        assertThat(DrawnCellar.sites().get(0).connectedWatts()).isEqualTo(160 + 107 + 45);
    }

    private static Site siteWithLights(int watts) {
        Rack rack = DrawnCellar.rack();
        Shelf lit = rack.shelves().get(0);
        Shelf shelf = new Shelf(lit.id(), lit.rackId(), 1, watts, lit.lamp(), 1, List.of(), lit.litPlaces());
        return new Site(
                rack.siteId(),
                "Hall cellar",
                1,
                new Circuit(15, 120),
                "",
                1,
                List.of(new Rack(rack.id(), rack.siteId(), "A", 1, 1, List.of(shelf))));
    }
}
