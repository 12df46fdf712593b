package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.timeline.FrostDates;

class GrowerFrostTest {
    private final GrowerFrost frost = new GrowerFrost(FrostSource.bundledOnly());

    @Test
    void an_unknown_postcode_has_no_dates_rather_than_someone_elses() {
        assertThat(frost.dates(at("US", "00000"), 0.1, 2027)).isEmpty();
        assertThat(frost.dates(at("XX", "55804"), 0.1, 2027)).isEmpty();
        assertThat(frost.dates(at("US", ""), 0.1, 2027)).isEmpty();
    }

    @Test
    void less_risk_means_a_later_spring_and_an_earlier_autumn() {
        FrostDates careful = frost.dates(at("US", "55804"), 0.1, 2027).orElseThrow();
        FrostDates bold = frost.dates(at("US", "55804"), 0.5, 2027).orElseThrow();

        assertThat(careful.lastSpringAtRisk()).isAfter(bold.lastSpringAtRisk());
        assertThat(careful.firstAutumnAtRisk()).isBefore(bold.firstAutumnAtRisk());
        assertThat(careful.lastSpringAverage()).isEqualTo(bold.lastSpringAtRisk());
        assertThat(careful.lastSpringAtRisk()).isBetween(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 7, 1));
    }

    @Test
    void the_season_asked_for_gives_the_year() {
        assertThat(frost.dates(at("US", "55804"), 0.1, 2031).orElseThrow().lastSpringAtRisk())
                .hasYear(2031);
    }

    private static Sowing.Grower at(String country, String postcode) {
        return new Sowing.Grower(UUID.randomUUID(), "Someone", country, postcode);
    }
}
