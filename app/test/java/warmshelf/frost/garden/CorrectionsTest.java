package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.frost.garden.FrostCorrection.Change;

class CorrectionsTest {
    private static final UUID TOM = new UUID(1, 1);
    private static final UUID PRIYA = new UUID(1, 2);
    private static final List<FrostCorrection> ALL = List.of(
            correction(new Area.Postcodes("US", "55"), "two figures"),
            correction(new Area.Postcodes("US", "5580"), "four figures"),
            correction(new Area.Postcodes("US", "558"), "three figures"),
            correction(new Area.Postcodes("CA", "K1A0"), "another land"),
            correction(new Area.Garden(PRIYA), "her garden"));

    @ParameterizedTest
    @CsvSource({
        "US,55804,four figures",
        "us,55811,three figures",
        "US,55101,two figures",
        "US,5580,four figures",
        "CA,k1a 0b1,another land",
        "CA,K1A-0B1,another land",
        "CA,55804,",
        "US,K1A0B1,",
        "US,5,"
    })
    void the_area_that_fits_most_of_the_postcode_counts(String country, String postcode, String reason) {
        assertThat(Corrections.holding(ALL, TOM, country, postcode).map(FrostCorrection::reason))
                .isEqualTo(java.util.Optional.ofNullable(reason));
    }

    @Test
    void the_gardens_own_counts_before_any_area() {
        assertThat(Corrections.holding(ALL, PRIYA, "US", "55804"))
                .map(FrostCorrection::reason)
                .contains("her garden");
    }

    // days by the calendar of a leap year
    @ParameterizedTest
    @CsvSource({
        "05-24,06-08,15",
        "06-08,05-24,-15",
        "05-24,05-24,0",
        "12-20,01-15,26",
        "01-15,12-20,-26",
        "02-28,03-01,2"
    })
    void days_are_counted_the_short_way_round_the_year(String first, String second, int days) {
        assertThat(Corrections.daysBetween(MonthDay.parse("--" + first), MonthDay.parse("--" + second)))
                .isEqualTo(days);
    }

    @Test
    void a_correction_says_in_words_what_it_does() {
        assertThat(CorrectionWords.of(new Change.Shift(1, -12)))
                .isEqualTo("last spring frost 1 day later, first autumn frost 12 days earlier");
        assertThat(CorrectionWords.of(new Change.Shift(0, 2))).isEqualTo("first autumn frost 2 days later");
        assertThat(CorrectionWords.of(new Change.Dates(null, null, MonthDay.of(9, 30), MonthDay.of(9, 12))))
                .isEqualTo("first autumn frost on average: 30 September,"
                        + " before this day in one autumn of ten: 12 September");
    }

    private static FrostCorrection correction(Area area, String reason) {
        return new FrostCorrection(
                UUID.randomUUID(), area, new Change.Shift(1, 0), reason, "Ilse", LocalDate.of(2027, 3, 1));
    }
}
