package warmshelf.frost.minima;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WholeSeasonsTest {
    private static final LocalDate LAST_FROST = LocalDate.of(2027, 5, 20);
    private static final LocalDate FIRST_FROST = LocalDate.of(2027, 9, 25);

    // six weeks after 20 May are up on 1 July; nine nights may be missing
    @ParameterizedTest
    @CsvSource({
        "2027-02-01,2027-07-31,1",
        "2027-02-01,2027-07-01,1",
        "2027-02-01,2027-06-22,1",
        "2027-02-01,2027-06-21,0",
        "2027-02-01,2027-05-20,0",
        "2027-05-20,2027-07-31,1"
    })
    void a_spring_counts_when_it_was_read_on_for_six_weeks_after_its_frost(String from, String to, int springs) {
        assertThat(whole(from, to).spring().seasons()).hasSize(springs);
    }

    // six weeks before 25 September begin on 14 August
    @ParameterizedTest
    @CsvSource({"2027-08-01,2027-12-31,1", "2027-08-23,2027-12-31,1", "2027-08-24,2027-12-31,0"})
    void an_autumn_counts_when_it_was_read_for_six_weeks_before_its_frost(String from, String to, int autumns) {
        assertThat(whole(from, to).autumn().seasons()).hasSize(autumns);
    }

    @Test
    void an_early_last_frost_counts_only_when_the_spring_was_read_into_june() {
        // Frost until 20 January, then none until the reader stopped in the middle of March: a later one may have come.
        DailyMinima minima = new DailyMinima();
        for (LocalDate day = LocalDate.of(2027, 1, 1); day.isBefore(LocalDate.of(2027, 3, 16)); day = day.plusDays(1)) {
            minima.add(day, day.getDayOfYear() <= 20 ? -1 : 3);
        }

        assertThat(whole(minima).spring().seasons()).isEmpty();
        assertThat(whole(minima).spring().leftOut()).isPositive();
    }

    @Test
    void in_the_southern_half_the_same_holds_half_a_year_later() {
        DailyMinima minima = new DailyMinima();
        for (LocalDate day = LocalDate.of(2027, 8, 1); day.isBefore(LocalDate.of(2028, 2, 1)); day = day.plusDays(1)) {
            minima.add(day, day.isAfter(LocalDate.of(2027, 10, 20)) ? 4 : -1);
        }

        FrostRecord record = WholeSeasons.of(FrostRecord.of(minima, Hemisphere.SOUTH, 0), minima);

        assertThat(record.spring().seasons()).containsExactly(new SeasonFrost(2027, LocalDate.of(2027, 10, 20)));
    }

    private static FrostRecord whole(String from, String to) {
        DailyMinima minima = new DailyMinima();
        for (LocalDate day = LocalDate.parse(from); !day.isAfter(LocalDate.parse(to)); day = day.plusDays(1)) {
            minima.add(day, day.isAfter(LAST_FROST) && day.isBefore(FIRST_FROST) ? 5 : -1);
        }
        return whole(minima);
    }

    private static FrostRecord whole(DailyMinima minima) {
        return WholeSeasons.of(FrostRecord.of(minima, Hemisphere.NORTH, 0), minima);
    }
}
