package warmshelf.frost.minima;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrostRecordTest {
    @Test
    void a_spring_ends_with_its_last_frost_and_an_autumn_opens_with_its_first() {
        Set<LocalDate> frosts = Set.of(
                LocalDate.of(2021, 1, 9),
                LocalDate.of(2021, 5, 3),
                LocalDate.of(2021, 10, 2),
                LocalDate.of(2021, 12, 1));

        FrostRecord record = north(Nights.of(2021, 2021, day -> frosts.contains(day) ? -1 : 8));

        assertThat(record.spring().seasons()).containsExactly(new SeasonFrost(2021, LocalDate.of(2021, 5, 3)));
        assertThat(record.autumn().seasons()).containsExactly(new SeasonFrost(2021, LocalDate.of(2021, 10, 2)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2.2, 0, 2.2})
    void a_minimum_at_the_threshold_is_a_frost_and_one_a_tenth_above_is_none(double threshold) {
        LocalDate at = LocalDate.of(2021, 4, 1);
        LocalDate above = LocalDate.of(2021, 4, 2);

        DailyMinima minima =
                Nights.of(2021, 2021, day -> day.equals(at) ? threshold : day.equals(above) ? threshold + 0.1 : 10);

        assertThat(FrostRecord.of(minima, Hemisphere.NORTH, threshold).spring().seasons())
                .containsExactly(new SeasonFrost(2021, at));
    }

    @Test
    void a_winter_that_straddles_new_year_stays_whole() {
        // the only frosts of each winter: first 5 January, last 20 December of the year before
        DailyMinima minima = Nights.of(
                2018,
                2022,
                day -> Set.of(MonthDay.of(1, 5), MonthDay.of(12, 20)).contains(MonthDay.from(day)) ? -1 : 9);

        FrostRecord record = north(minima);

        assertThat(record.spring().seasons()).contains(new SeasonFrost(2020, LocalDate.of(2020, 1, 5)));
        assertThat(record.autumn().seasons()).contains(new SeasonFrost(2020, LocalDate.of(2020, 12, 20)));
    }

    @Test
    void a_first_frost_after_new_year_belongs_to_the_autumn_before() {
        DailyMinima minima = Nights.of(2018, 2022, day -> MonthDay.from(day).equals(MonthDay.of(1, 15)) ? -1 : 9);

        FrostRecord record = north(minima);

        assertThat(record.autumn().seasons()).contains(new SeasonFrost(2019, LocalDate.of(2020, 1, 15)));
        assertThat(record.autumn().dayAt(0.5)).hasValue(365 + 15);
    }

    @Test
    void a_place_without_frost_has_seasons_and_no_dates() {
        FrostRecord record = north(Nights.of(2000, 2019, day -> 12));

        // the December before the first year is not on record, so its winter cannot be called free of frost
        assertThat(record.spring().seasons()).hasSize(19);
        assertThat(record.spring().leftOut()).isEqualTo(1);
        assertThat(record.spring().anyFrost()).hasValue(0);
        assertThat(record.spring().dayAt(0.1)).isEmpty();
        assertThat(record.spring().latest()).isEmpty();
        assertThat(record.autumn().dayAt(0.1)).isEmpty();
    }

    @Test
    void years_without_frost_count_in_the_share_and_not_in_the_days() {
        // frost on 10 March in even years only: half of the springs
        LocalDate unused = LocalDate.of(2000, 3, 10);
        DailyMinima minima = Nights.of(
                2000, 2019, day -> day.getYear() % 2 == 0 && MonthDay.from(day).equals(MonthDay.from(unused)) ? -1 : 9);

        FrostSide spring = north(minima).spring();

        assertThat(spring.anyFrost()).hasValue(0.5);
        assertThat(spring.dayAt(0.5)).isEmpty();
        assertThat(spring.dayAt(0.3)).hasValue(31 + 28 + 10);
    }

    @Test
    void a_place_with_frost_in_every_month_has_its_dates_on_either_side_of_midsummer() {
        DailyMinima minima = Nights.of(2010, 2020, day -> day.getDayOfMonth() == 15 ? -1 : 4);

        FrostRecord record = north(minima);

        assertThat(record.spring().latest())
                .hasValueSatisfying(day -> assertThat(MonthDay.from(day)).isEqualTo(MonthDay.of(7, 15)));
        assertThat(record.autumn().earliest())
                .hasValueSatisfying(day -> assertThat(MonthDay.from(day)).isEqualTo(MonthDay.of(8, 15)));
    }

    @Test
    void a_spring_with_ten_days_missing_before_the_latest_frost_on_record_is_left_out() {
        FrostSide nineMissing = springsWithGapIn2015(9);
        FrostSide tenMissing = springsWithGapIn2015(10);

        assertThat(nineMissing.leftOut()).isZero();
        assertThat(tenMissing.leftOut()).isEqualTo(1);
        assertThat(tenMissing.seasons()).extracting(SeasonFrost::year).doesNotContain(2015);
    }

    /** Last frosts: 20 May in 2012, 1 April in all other years; days missing from 2 April 2015 on. */
    private static FrostSide springsWithGapIn2015(int missing) {
        LocalDate gap = LocalDate.of(2015, 4, 2);
        return north(Nights.of(2010, 2019, day -> {
                    boolean frost = MonthDay.from(day).equals(MonthDay.of(4, 1))
                            || day.equals(LocalDate.of(2012, 5, 20))
                            || day.getMonthValue() == 11;
                    boolean gone = !day.isBefore(gap) && day.isBefore(gap.plusDays(missing));
                    return gone ? Double.NaN : frost ? -1 : 9;
                }))
                .spring();
    }

    @Test
    void days_missing_in_midsummer_do_no_harm() {
        FrostSide spring = north(
                        Nights.of(2010, 2019, day -> day.getMonthValue() == 7 ? Double.NaN : Nights.north(day)))
                .spring();

        assertThat(spring.leftOut()).isZero();
        assertThat(spring.seasons()).hasSize(10);
    }

    @Test
    void a_year_missing_is_named_and_its_seasons_are_not_counted() {
        FrostRecord record =
                north(Nights.of(2010, 2019, day -> day.getYear() == 2014 ? Double.NaN : Nights.north(day)));

        assertThat(record.yearsWithoutReading()).isEqualTo(List.of(2014));
        assertThat(record.spring().seasons())
                .hasSize(9)
                .extracting(SeasonFrost::year)
                .doesNotContain(2014);
    }

    @Test
    void south_of_the_equator_the_dates_are_those_of_the_north_half_a_year_later() {
        Random nights = new Random(20270301);
        double[] noise = nights.doubles(366 * 30, -6, 6).toArray();
        LocalDate start = LocalDate.of(1990, 8, 1);
        DailyMinima north = Nights.between(start, start.plusDays(9999), day -> minimum(start, day, noise));
        DailyMinima south = Nights.between(
                start.plusDays(184), start.plusDays(184 + 9999), day -> minimum(start, day.minusDays(184), noise));

        FrostSide northern = FrostRecord.of(north, Hemisphere.NORTH, 0).spring();
        FrostSide southern = FrostRecord.of(south, Hemisphere.SOUTH, 0).spring();

        assertThat(southern.seasons()).hasSameSizeAs(northern.seasons());
        for (int i = 0; i < northern.seasons().size(); i++) {
            assertThat(southern.seasons().get(i).day())
                    .isEqualTo(northern.seasons().get(i).moved(184).day());
        }
        assertThat(Hemisphere.of(south)).isEqualTo(Hemisphere.SOUTH);
        assertThat(Hemisphere.of(north)).isEqualTo(Hemisphere.NORTH);
    }

    private static double minimum(LocalDate start, LocalDate day, double[] noise) {
        int at = (int) (day.toEpochDay() - start.toEpochDay());
        return 6 + 12 * Math.cos(2 * Math.PI * at / 365.25) + noise[at];
    }

    @Test
    void the_southern_autumn_is_the_one_after_the_spring() {
        DailyMinima minima = Nights.of(2000, 2010, day -> Nights.north(day.plusDays(183)));

        FrostRecord record = FrostRecord.of(minima, Hemisphere.SOUTH, 0);

        assertThat(record.spring().seasons().get(3).day())
                .hasYear(record.spring().seasons().get(3).year());
        assertThat(record.autumn().seasons().get(3).day())
                .hasYear(record.autumn().seasons().get(3).year() + 1);
        assertThat(record.autumn().dayAt(0.5).orElseThrow())
                .isGreaterThan(record.spring().dayAt(0.5).orElseThrow());
    }

    @Test
    void the_day_after_28_february_in_a_leap_year_is_told_from_1_march() {
        assertThat(new SeasonFrost(2024, LocalDate.of(2024, 2, 29)).number()).isEqualTo(59.5);
        assertThat(new SeasonFrost(2024, LocalDate.of(2024, 3, 1)).number()).isEqualTo(60);
        assertThat(new SeasonFrost(2023, LocalDate.of(2023, 3, 1)).number()).isEqualTo(60);
        assertThat(new SeasonFrost(2024, LocalDate.of(2023, 12, 31)).number()).isZero();
        assertThat(new SeasonFrost(2024, LocalDate.of(2025, 1, 1)).number()).isEqualTo(366);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void warmer_minima_and_lower_thresholds_never_give_a_later_spring_frost_or_an_earlier_autumn_one(long seed) {
        double[] noise = new Random(seed).doubles(366 * 12, -8, 8).toArray();
        LocalDate start = LocalDate.of(2000, 1, 1);
        DailyMinima cold = Nights.of(2000, 2011, day -> Nights.north(day) + at(noise, start, day));
        DailyMinima warm = Nights.of(2000, 2011, day -> Nights.north(day) + at(noise, start, day) + seed / 2.0);

        noLaterInSpring(north(cold), north(warm));
        noLaterInSpring(FrostRecord.of(cold, Hemisphere.NORTH, 2.2), north(cold));
        noLaterInSpring(north(cold), FrostRecord.of(cold, Hemisphere.NORTH, -2.2));
    }

    private static double at(double[] noise, LocalDate start, LocalDate day) {
        return noise[(int) (day.toEpochDay() - start.toEpochDay())];
    }

    private static void noLaterInSpring(FrostRecord colder, FrostRecord warmer) {
        for (double risk : new double[] {0.1, 0.3, 0.5}) {
            assertThat(warmer.spring().countedAt(risk).orElse(-999))
                    .isLessThanOrEqualTo(colder.spring().countedAt(risk).orElseThrow());
            assertThat(warmer.autumn().countedAt(risk).orElse(999))
                    .isGreaterThanOrEqualTo(colder.autumn().countedAt(risk).orElseThrow());
        }
    }

    private static FrostRecord north(DailyMinima minima) {
        return FrostRecord.of(minima, Hemisphere.NORTH, 0);
    }
}
