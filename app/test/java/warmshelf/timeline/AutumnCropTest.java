package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.testing.Crops;
import warmshelf.timeline.PlantingOut.ByFrost;

/**
 * Autumn crops against what is published for central Iowa, whose first frost comes on 10 October (Reiman Gardens, Iowa State
 * University): its table of latest planting dates (2016), which counts the days to maturity back from that day without any for
 * slower growth, and Iowa State University Extension PM 534, Planting and harvesting times for garden vegetables.
 */
class AutumnCropTest {
    private static final LocalDate FROST = LocalDate.of(2027, 10, 10);
    private static final FrostDates IOWA = FrostDates.of(LocalDate.of(2027, 5, 8), FROST);
    private static final LocalDate JULY = LocalDate.of(2027, 7, 20);

    // Reiman Gardens: Brussels sprouts of 90 to 100 days 12 July, parsley of 70 to 90 days 1 August, cauliflower of 60
    // to 80
    // days 11 August. Ours have the same least days, and two weeks more for the shorter days.
    @ParameterizedTest
    @CsvSource({"brussels-sprouts, 2027-07-12", "parsley, 2027-08-01", "cauliflower, 2027-08-11"})
    void the_last_planting_is_the_published_one_and_two_weeks_earlier(String id, LocalDate published) {
        assertThat(planted(id).latest()).isEqualTo(published.minusDays(14));
    }

    // PM 534: 'Beets and Swiss chard: last practical planting date for fall crop is August 1'; sown where they grow.
    @ParameterizedTest
    @CsvSource({"chard", "beet"})
    void what_is_counted_from_sowing_is_sown_within_ten_days_of_the_published_day(String id) {
        LocalDate last = asked(id, IOWA, SeasonPart.AUTUMN)
                .on(LocalDate.of(2027, 6, 1))
                .step(Step.SOW)
                .latest();

        assertThat(last).isBetween(LocalDate.of(2027, 7, 22), LocalDate.of(2027, 8, 11));
    }

    // A. McDaniel, Virginia Tech: 'a 65-day crop from seeding could need closer to 80 days'.
    @Test
    void a_kind_of_65_days_takes_about_80_in_autumn() {
        Crop crop = Crops.of("cabbage").withMaturity(Optional.of(new DaysToMaturity(65, 65, Basis.TRANSPLANTING)));
        Asked asked = Asked.of(crop, 20, new ByFrost(IOWA, SeasonPart.AUTUMN)).on(LocalDate.of(2027, 6, 1));

        long days = ChronoUnit.DAYS.between(
                asked.step(Step.PLANT_OUT).ideal(), asked.step(Step.RIPE).ideal());

        assertThat(days).isBetween(78L, 82L);
        assertThat(asked.step(Step.RIPE).why()).contains("14 days more in autumn");
        assertThat(asked.step(Step.PLANT_OUT).why()).contains("usual first frost, 10 October", "14 days more");
    }

    // University of Minnesota Extension M1227: kale can be sown from late June to August for autumn.
    @Test
    void kale_asked_in_july_is_for_autumn_and_not_too_late() {
        Timeline kale = next("kale", JULY);

        assertThat(kale.season().part()).isEqualTo(SeasonPart.AUTUMN);
        assertThat(kale.verdict()).isEqualTo(Verdict.HURRY);
        assertThat(kale.step(Step.RIPE).orElseThrow().earliest()).isBefore(LocalDate.of(2027, 10, 29));
        assertThat(next("kale", LocalDate.of(2027, 8, 25)).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(next("kale", LocalDate.of(2027, 9, 10)).verdict()).isEqualTo(Verdict.TOO_LATE);
    }

    @Test
    void a_sowing_for_spring_ends_where_that_for_autumn_begins() {
        LocalDate begins = asked("kale", IOWA, SeasonPart.AUTUMN)
                .on(LocalDate.of(2027, 3, 1))
                .step(Step.SOW)
                .earliest();

        assertThat(next("kale", begins.minusDays(1)).season().part()).isEqualTo(SeasonPart.SPRING);
        assertThat(next("kale", begins).season().part()).isEqualTo(SeasonPart.AUTUMN);
        assertThat(next("kale", begins).verdict()).isEqualTo(Verdict.IN_TIME);
    }

    @Test
    void a_crop_that_frost_kills_has_no_part_but_spring() {
        assertThat(IOWA.parts(Crops.TOMATO)).containsExactly(SeasonPart.SPRING);
        assertThat(FrostDates.of(LocalDate.of(2027, 5, 8), null).parts(Crops.KALE))
                .as("nothing can be counted back where no first frost is known")
                .containsExactly(SeasonPart.SPRING);
    }

    @Test
    void in_the_south_autumn_is_that_of_the_next_year() {
        FrostDates south = FrostDates.of(LocalDate.of(2027, 10, 5), LocalDate.of(2028, 5, 1));

        Asked kale = asked("kale", south, SeasonPart.AUTUMN).on(LocalDate.of(2028, 1, 10));

        assertThat(kale.answered().verdict()).isEqualTo(Verdict.IN_TIME);
        assertThat(kale.step(Step.PLANT_OUT).latest()).isEqualTo(LocalDate.of(2028, 3, 3));
        assertThat(kale.step(Step.RIPE).earliest()).isBefore(LocalDate.of(2028, 5, 1));
    }

    @Test
    void what_stands_over_winter_is_out_weeks_before_the_frost_and_has_no_harvest_this_year() {
        Asked foxglove = asked("foxglove", IOWA, SeasonPart.WINTER).on(LocalDate.of(2027, 6, 1));

        assertThat(foxglove.answered().verdict()).isEqualTo(Verdict.IN_TIME);
        assertThat(foxglove.step(Step.PLANT_OUT).latest()).isEqualTo(FROST.minusWeeks(6));
        assertThat(foxglove.step(Step.PLANT_OUT).why()).contains("6 to 10 weeks before the usual first frost");
        assertThat(foxglove.answered().step(Step.RIPE)).isEmpty();
        assertThat(foxglove.answered().season().sentences(foxglove.question().units()))
                .containsExactly("Biennial: it flowers in its second year.");
        assertThat(foxglove.on(LocalDate.of(2027, 7, 15)).answered().verdict()).isEqualTo(Verdict.TOO_LATE);
    }

    @Test
    void what_flowers_only_in_its_second_year_is_sown_for_winter_when_spring_is_over() {
        assertThat(next("foxglove", LocalDate.of(2027, 6, 28)).season().part()).isEqualTo(SeasonPart.WINTER);
        assertThat(next("spinach", LocalDate.of(2027, 10, 1)).season().part())
                .as("what is cut in its first year stands over winter by choice alone")
                .isEqualTo(SeasonPart.AUTUMN);
    }

    // PM 534: snap beans, last practical date for planting 1 August; sweet corn of an early variety 1 July. Both keep
    // two weeks
    // of harvest before the frost, which the last sowing that is sure does not.
    @ParameterizedTest
    @CsvSource({"snap-bean, 14, 14, 2027-08-01", "sweet-corn, 14, 14, 2027-07-01"})
    void sowing_again_ends_when_the_published_table_does_or_within_its_two_weeks(
            String id, int least, int most, LocalDate published) {
        SowAgain again = asked(id, IOWA, SeasonPart.SPRING)
                .on(LocalDate.of(2027, 5, 1))
                .answered()
                .season()
                .again()
                .orElseThrow();

        assertThat(again.daysMin()).isEqualTo(least);
        assertThat(again.daysMax()).isEqualTo(most);
        assertThat(again.until()).isBetween(published, published.plusDays(16));
    }

    @Test
    void nothing_is_to_be_sown_again_when_no_time_is_left_for_it() {
        assertThat(asked("snap-bean", IOWA, SeasonPart.SPRING)
                        .on(LocalDate.of(2027, 8, 8))
                        .answered()
                        .season()
                        .again())
                .isEmpty();
    }

    @Test
    void what_was_sown_is_offered_again_only_while_another_is_in_time() {
        Asked sown = asked("snap-bean", IOWA, SeasonPart.SPRING).having(Seen.sownOn(LocalDate.of(2027, 5, 1)));

        assertThat(sown.on(LocalDate.of(2027, 7, 1)).answered().season().again())
                .isPresent();
        assertThat(sown.on(LocalDate.of(2027, 8, 20)).answered().season().again())
                .isEmpty();
    }

    @Test
    void celery_waits_for_the_last_frost_and_the_reason_has_both_limits() {
        FrostDates dates = new FrostDates(LocalDate.of(2027, 5, 8), LocalDate.of(2027, 5, 20), FROST);

        TimelineStep out = Asked.of(Crops.of("celery"), 21, dates).step(Step.PLANT_OUT);

        assertThat(out.ideal()).isEqualTo(LocalDate.of(2027, 5, 20));
        assertThat(out.why())
                .contains("colder than -2 °C, which is what it bears")
                .contains("10 days of nights under 13 °C, which make it flower early");
    }

    private static DateWindow planted(String id) {
        return BeforeFirstFrost.of(Crops.of(id), SeasonPart.AUTUMN, IOWA)
                .orElseThrow()
                .days();
    }

    private static Asked asked(String id, FrostDates dates, SeasonPart part) {
        return Asked.of(Crops.of(id), 20, new ByFrost(dates, part));
    }

    private static Timeline next(String id, LocalDate today) {
        List<SeasonPart> parts = IOWA.parts(Crops.of(id));
        return NextPart.of(
                        Crops.of(id),
                        parts,
                        part -> Optional.of(asked(id, IOWA, part).on(today).answered()))
                .orElseThrow();
    }
}
