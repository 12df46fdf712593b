package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.BadInput;

class FrostClimatesTest {
    private static final int SEASON = 2027;

    @Test
    void dates_are_moved_from_the_grids_elevation_to_the_points() {
        // at 46.75,-92.25 the grid has spring day 140.7 at 338 m and 2.6 days per 100 m: at 238 m day 138.1, 18 May
        FrostClimate climate = FrostClimates.at(46.75, -92.25, 238);

        assertThat(climate.spring().medianDay()).isCloseTo(138.1, within(1e-9));
        assertThat(climate.spring().adjustmentDays()).isCloseTo(-2.6, within(1e-9));
        assertThat(climate.lastSpringFrost(0.5, SEASON)).contains(LocalDate.of(2027, 5, 18));
        assertThat(Objects.requireNonNull(climate.evidence().surface()).referenceElevationM())
                .isEqualTo(338);
    }

    @ParameterizedTest
    @CsvSource({"46.8,-92.1", "44.05,-121.31", "35.6,-82.55", "40.0,-105.3", "31.0,-97.0"})
    void higher_ground_thaws_later_where_the_slope_says_so(double latitude, double longitude) {
        FrostClimate low = FrostClimates.at(latitude, longitude, 200);
        FrostClimate high = FrostClimates.at(latitude, longitude, 700);

        boolean laterUpward = low.spring().daysPer100M() > 0;
        assertThat(high.spring().medianDay() > low.spring().medianDay()).isEqualTo(laterUpward);
        boolean earlierUpward = low.autumn().daysPer100M() < 0;
        assertThat(high.autumn().medianDay() < low.autumn().medianDay()).isEqualTo(earlierUpward);
    }

    @ParameterizedTest
    @ValueSource(strings = {"55811", "55802", "80301", "97701", "33880", "78701"})
    void a_smaller_risk_never_gives_an_earlier_spring_date(String code) {
        FrostClimate climate = climate(code);

        LocalDate half = climate.lastSpringFrost(0.5, SEASON).orElseThrow();
        LocalDate third = climate.lastSpringFrost(0.3, SEASON).orElseThrow();
        LocalDate tenth = climate.lastSpringFrost(0.1, SEASON).orElseThrow();

        assertThat(third).isAfterOrEqualTo(half);
        assertThat(tenth).isAfterOrEqualTo(third);
    }

    @Test
    void the_shore_at_duluth_thaws_days_before_the_hill_and_freezes_days_after_it() {
        // The surface knows the lake only through its stations and the height: it makes the shore 5 days earlier in
        // spring
        // and 5 later in autumn, less than people there report.
        FrostClimate shore = climate("55802");
        FrostClimate hill = climate("55811");

        assertThat(days(
                        shore.lastSpringFrost(0.5, SEASON).orElseThrow(),
                        hill.lastSpringFrost(0.5, SEASON).orElseThrow()))
                .isEqualTo(5);
        assertThat(days(
                        hill.firstAutumnFrost(0.5, SEASON).orElseThrow(),
                        shore.firstAutumnFrost(0.5, SEASON).orElseThrow()))
                .isEqualTo(5);
    }

    @Test
    void the_same_day_and_month_is_given_in_a_leap_year() {
        FrostClimate climate = climate("55811");

        LocalDate common = climate.lastSpringFrost(0.1, 2027).orElseThrow();
        LocalDate leap = climate.lastSpringFrost(0.1, 2028).orElseThrow();

        assertThat(leap).isEqualTo(common.withYear(2028));
    }

    @Test
    void where_frost_is_rare_the_chance_of_any_is_below_one_and_the_reader_is_told() {
        FrostClimate climate = FrostClimates.at(26.75, -82.25, 3);

        // freeze rare at 60 % of the stations around: 0.4 + 0.6 x 0.05
        assertThat(climate.spring().anyFrost()).isCloseTo(0.43, within(1e-9));
        assertThat(climate.lastSpringFrost(0.5, SEASON)).isEmpty();
        assertThat(climate.lastSpringFrost(0.1, SEASON)).isPresent();
        assertThat(climate.evidence().notes()).anyMatch(note -> note instanceof FrostNote.FrostRare);
    }

    @Test
    void a_postcodes_vague_elevation_widens_the_spread_and_a_typed_one_does_not() {
        PostcodePlace place = Postcodes.bundled().find("US", "55802").orElseThrow();

        FrostClimate byPostcode = FrostClimates.at(place);
        FrostClimate byPoint = FrostClimates.at(place.latitude(), place.longitude(), place.elevationM());

        assertThat(byPostcode.spring().medianDay()).isEqualTo(byPoint.spring().medianDay());
        assertThat(byPoint.spring().elevationSdDays()).isZero();
        assertThat(byPostcode.spring().sdDays()).isGreaterThan(byPoint.spring().sdDays());
        assertThat(byPostcode.evidence().notes()).anyMatch(note -> note instanceof FrostNote.AverageElevation);
    }

    @Test
    void a_place_beyond_the_grid_is_refused_with_the_reason() {
        PostcodePlace honolulu = Postcodes.bundled().find("US", "96813").orElseThrow();

        assertThat(FrostClimates.find(honolulu)).isEmpty();
        assertThatThrownBy(() -> FrostClimates.at(honolulu))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("mainland of the United States");
    }

    @ParameterizedTest
    @CsvSource({"91,0,0,latitude", "0,181,0,longitude", "46,-92,9000,elevation", "46,-92,NaN,elevation"})
    void figures_that_are_not_on_earth_are_refused_by_name(
            double latitude, double longitude, double elevation, String name) {
        assertThatThrownBy(() -> FrostClimates.at(latitude, longitude, elevation))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(name);
    }

    private static FrostClimate climate(String code) {
        return FrostClimates.at(Postcodes.bundled().find("US", code).orElseThrow());
    }

    private static long days(LocalDate earlier, LocalDate later) {
        return ChronoUnit.DAYS.between(earlier, later);
    }
}
