package warmshelf.frost.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EstimatesTest {
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void where_dates_follow_hopkins_rule_the_fit_and_the_rule_find_them_exactly(boolean south) {
        Estimates estimates = new Estimates(new StationSet(Country.of(80, 0, 1, south)));
        double latitude = south ? -42.7 : 42.7;
        int half = south ? 181 : 0;

        Estimates.Days fitted =
                estimates.fitted(latitude, 2.5, 650, any -> true).orElseThrow();
        Estimates.Days byRule =
                estimates.byHopkins(latitude, 2.5, 650, any -> true).orElseThrow();

        double spring = Country.springDay(42.7, 650) + half;
        assertThat(fitted.spring()).isCloseTo(spring, within(1e-6));
        assertThat(byRule.spring()).isCloseTo(spring, within(1e-6));
        assertThat(fitted.autumn()).isCloseTo(400 - Country.springDay(42.7, 650) + half, within(1e-6));
        assertThat(byRule.autumn()).isCloseTo(fitted.autumn(), within(1e-6));
    }

    @Test
    void a_steeper_slope_with_height_is_learnt_from_the_stations() {
        // ten days per 100 m instead of Hopkins' 3.3
        List<StationFrost> steep = Country.of(200, 0, 2, false).stream()
                .map(one -> at(one, 110 + one.elevationM() / 10))
                .toList();

        Estimates.Days days = new Estimates(new StationSet(steep))
                .fitted(42.5, 2.5, 1000, any -> true)
                .orElseThrow();

        // 200 m above the highest station: Hopkins' slope from there on would give 190 + 6.6, from the middle 150 +
        // 19.7
        assertThat(days.spring()).isBetween(200.0, 212.0);
    }

    private static StationFrost at(StationFrost one, double day) {
        return new StationFrost(
                one.id(),
                one.name(),
                one.latitude(),
                one.longitude(),
                one.elevationM(),
                Optional.of(new StationFrost.Dates(
                        new SeasonDays(day, OptionalDouble.empty()),
                        new SeasonDays(400 - day, OptionalDouble.empty()))));
    }

    @Test
    void leaving_stations_out_our_ways_beat_the_nearest_station_unadjusted() {
        LeaveOneOut.Errors spring =
                new LeaveOneOut(Country.of(150, 4, 3, false)).springAndAutumn().get(0);

        assertThat(spring.stations().median()).isLessThan(spring.nearest().median());
        assertThat(spring.surface().median()).isLessThan(spring.nearest().median());
        assertThat(spring.hopkins().median()).isLessThan(spring.nearest().median());
        // the sites' own scatter, 4 days, cannot be told: half of its errors are beyond 0.67 x 4
        assertThat(spring.stations().median()).isBetween(2.0, 4.0);
    }

    @Test
    void a_station_left_out_has_no_part_in_its_own_estimate() {
        List<StationFrost> country = Country.of(60, 0, 4, false);
        StationFrost odd = at(country.get(7), 300);
        List<StationFrost> withOdd =
                country.stream().map(one -> one.id().equals("S7") ? odd : one).toList();

        Estimates.Days days = new Estimates(new StationSet(withOdd))
                .fitted(odd.latitude(), odd.longitude(), odd.elevationM(), index -> index != 7)
                .orElseThrow();

        assertThat(days.spring()).isCloseTo(Country.springDay(odd.latitude(), odd.elevationM()), within(1e-6));
    }

    @Test
    void a_single_station_answers_by_hopkins_rule_alone() {
        List<StationFrost> one = Country.of(1, 0, 5, false);

        StationEstimate estimate =
                StationEstimate.at(new StationSet(one), 43, 2, 500, 0).orElseThrow();

        assertThat(estimate.spring().medianDay()).isCloseTo(Country.springDay(43, 500), within(1e-6));
        assertThat(estimate.stations()).hasSize(1);
        assertThat(estimate.stations().get(0).weight()).isEqualTo(1);
    }

    @Test
    void far_from_all_stations_the_spread_is_wider() {
        StationSet stations = new StationSet(Country.of(100, 4, 6, false));

        double within = StationEstimate.at(stations, 42.5, 2.5, 400, 0)
                .orElseThrow()
                .spring()
                .sdDays();
        double far = StationEstimate.at(stations, 48, 12, 400, 0)
                .orElseThrow()
                .spring()
                .sdDays();
        double unsureOfHeight = StationEstimate.at(stations, 42.5, 2.5, 400, 200)
                .orElseThrow()
                .spring()
                .sdDays();

        assertThat(far).isGreaterThan(within);
        assertThat(unsureOfHeight).isGreaterThan(within);
    }
}
