package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class TimelineTest {
    private static final LocalDate MAY_24 = LocalDate.of(2027, 5, 24);

    @Test
    void a_pepper_is_counted_back_from_a_week_after_the_last_frost() {
        Asked pepper = Asked.of(Crops.PEPPER, 26, MAY_24);

        assertThat(pepper.step(Step.PLANT_OUT).ideal()).isEqualTo(LocalDate.of(2027, 5, 31));
        assertThat(pepper.step(Step.SOW).earliest()).isEqualTo(LocalDate.of(2027, 3, 15));
        assertThat(pepper.step(Step.SOW).ideal()).isEqualTo(LocalDate.of(2027, 3, 22));
        assertThat(pepper.step(Step.SOW).latest()).isEqualTo(LocalDate.of(2027, 3, 29));
        assertThat(pepper.step(Step.SOAK).ideal()).isEqualTo(LocalDate.of(2027, 3, 21));
    }

    // Common practice: peppers at least eight weeks before the last frost.
    @ParameterizedTest
    @MethodSource("lastFrosts")
    void peppers_are_sown_at_least_eight_weeks_before_the_last_frost(LocalDate lastFrost) {
        for (double matC : new double[] {20, 24, 27, 30}) {
            TimelineStep sow = Asked.of(Crops.PEPPER, matC, lastFrost)
                    .on(lastFrost.minusDays(200))
                    .step(Step.SOW);

            assertThat(sow.latest()).isBeforeOrEqualTo(lastFrost.minusWeeks(8));
        }
    }

    @ParameterizedTest
    @MethodSource("lastFrosts")
    void the_eight_weeks_hold_before_the_frost_day_that_is_planned_with(LocalDate average) {
        for (int spread = 0; spread <= 30; spread += 5) {
            LocalDate atRisk = average.plusDays(spread);
            TimelineStep sow = Asked.of(Crops.PEPPER, 26, new FrostDates(average, atRisk, null))
                    .on(average.minusDays(200))
                    .step(Step.SOW);

            assertThat(sow.latest()).isBeforeOrEqualTo(atRisk.minusWeeks(8));
        }
    }

    static Stream<LocalDate> lastFrosts() {
        // every twelfth day of spring, north and south, in a common year and a leap year
        return Stream.of(LocalDate.of(2027, 2, 10), LocalDate.of(2028, 2, 5), LocalDate.of(2027, 9, 1))
                .flatMap(start -> Stream.iterate(start, day -> day.plusDays(12)).limit(11));
    }

    // Common practice: at 24-27 °C (75-80 °F) most peppers come up within one to two weeks.
    @Test
    void peppers_come_up_within_one_to_two_weeks_on_a_warm_mat() {
        for (double matC : new double[] {24, 25.5, 27}) {
            Asked pepper = Asked.of(Crops.PEPPER, matC, MAY_24).having(Seen.sownOn(LocalDate.of(2027, 3, 22)));
            TimelineStep light = pepper.step(Step.LIGHT);

            assertThat(light.earliest()).isAfterOrEqualTo(LocalDate.of(2027, 3, 29));
            assertThat(light.ideal()).isBetween(LocalDate.of(2027, 3, 29), LocalDate.of(2027, 4, 5));
            assertThat(light.latest()).isBeforeOrEqualTo(LocalDate.of(2027, 4, 7));
        }
    }

    // Common practice: the very hot kinds take a month or two.
    @Test
    void very_hot_peppers_may_take_a_month_or_two() {
        Asked pepper = Asked.of(Crops.HOT_PEPPER, 26, MAY_24);

        assertThat(ChronoUnit.DAYS.between(
                        pepper.step(Step.SOW).latest(), pepper.step(Step.LIGHT).latest()))
                .isBetween(30L, 62L);
    }

    // Common practice: pre-sprouted peppers are looked at daily from about day seven.
    @Test
    void bags_of_peppers_are_looked_at_from_day_seven() {
        Asked bag = Asked.of(Crops.PEPPER, 26, MAY_24).inBag();

        assertThat(bag.step(Step.FIRST_LOOK).ideal())
                .isEqualTo(bag.step(Step.SOW).ideal().plusDays(7));
    }

    @Test
    void quick_crops_are_looked_at_sooner() {
        Asked bag = Asked.of(Crops.LETTUCE, 20, MAY_24).inBag();

        assertThat(bag.step(Step.FIRST_LOOK).ideal())
                .isEqualTo(bag.step(Step.SOW).ideal().plusDays(2));
    }

    @Test
    void a_tender_crop_never_goes_out_before_the_accepted_risk() {
        FrostDates dates = new FrostDates(LocalDate.of(2027, 5, 10), MAY_24, null);

        TimelineStep out = Asked.of(Crops.TOMATO, 26, dates).step(Step.PLANT_OUT);

        assertThat(out.earliest()).isEqualTo(MAY_24);
        assertThat(out.why())
                .contains("10 May")
                .contains("24 May")
                .contains("10 °C")
                .doesNotContain("°F");
    }

    @Test
    void a_tender_crop_never_goes_out_before_its_usual_offset() {
        FrostDates dates = new FrostDates(LocalDate.of(2027, 5, 22), MAY_24, null);

        assertThat(Asked.of(Crops.PEPPER, 26, dates).step(Step.PLANT_OUT).earliest())
                .isEqualTo(LocalDate.of(2027, 5, 29));
    }

    @Test
    void a_hardy_crop_goes_out_weeks_before_both_frost_days() {
        FrostDates dates = new FrostDates(LocalDate.of(2027, 5, 10), MAY_24, null);

        TimelineStep out = Asked.of(Crops.KALE, 24, dates).step(Step.PLANT_OUT);

        assertThat(out.earliest()).isEqualTo(LocalDate.of(2027, 5, 10).minusDays(42));
        assertThat(out.ideal()).isEqualTo(MAY_24.minusDays(42));
        assertThat(out.latest()).isEqualTo(MAY_24.minusDays(28));
    }

    @Test
    void under_cover_the_day_that_was_named_decides() {
        LocalDate named = LocalDate.of(2027, 4, 20);

        TimelineStep out =
                Asked.of(Crops.TOMATO, 26, new PlantingOut.UnderCover(named)).step(Step.PLANT_OUT);

        assertThat(List.of(out.earliest(), out.ideal(), out.latest())).containsOnly(named);
        assertThat(out.why()).contains("Under cover");
    }

    @Test
    void a_cooler_mat_is_sown_on_earlier_by_the_days_it_costs() {
        TimelineStep warm = Asked.of(Crops.PEPPER, 28, MAY_24).step(Step.SOW);
        TimelineStep cool = Asked.of(Crops.PEPPER, 17, MAY_24).step(Step.SOW);

        // Harrington & Minges (1954): pepper 13 days at 20 °C, 25 at 15 °C.
        assertThat(ChronoUnit.DAYS.between(cool.ideal(), warm.ideal())).isBetween(3L, 15L);
        assertThat(cool.why()).contains("17 °C");
        assertThat(Asked.of(Crops.PEPPER, 17, MAY_24).step(Step.PLANT_OUT).ideal())
                .isEqualTo(LocalDate.of(2027, 5, 31));
    }

    @Test
    void a_bag_leaves_the_mat_before_a_tray_would() {
        Asked tray = Asked.of(Crops.PEPPER, 26, MAY_24);

        assertThat(tray.inBag().answered().warmDays())
                .isLessThan(tray.answered().warmDays());
        assertThat(tray.answered().warmDays()).isEqualTo(15); // two weeks by common practice, and a day to move
        assertThat(tray.inBag().step(Step.OFF_HEAT).ideal())
                .isEqualTo(tray.inBag().step(Step.MOVE_TO_CELLS).ideal());
    }

    @Test
    void what_lies_on_no_mat_needs_none() {
        Timeline timeline = Asked.of(Crops.KALE, 18, MAY_24).withoutMat().answered();

        assertThat(timeline.warmDays()).isZero();
        assertThat(timeline.step(Step.OFF_HEAT)).isEmpty();
        assertThat(timeline.step(Step.LIGHT)).isPresent();
    }

    @Test
    void seed_that_cannot_come_up_at_a_temperature_is_said_so() {
        Timeline timeline = Asked.of(Crops.PEPPER, 10, MAY_24).answered();

        assertThat(timeline.warmDays()).isZero();
        assertThat(timeline.noteWords(Units.METRIC)).anyMatch(note -> note.contains("does not come up at 10 °C"));
    }

    @Test
    void a_reader_of_fahrenheit_is_told_fahrenheit_alone() {
        Asked cool = Asked.of(Crops.PEPPER, 10, MAY_24).readIn(Units.AMERICAN);
        Timeline timeline = cool.answered();

        assertThat(timeline.noteWords(Units.AMERICAN)).anyMatch(note -> note.contains("does not come up at 50 °F"));
        assertThat(timeline.steps()).extracting(TimelineStep::why).noneMatch(why -> why.contains("°C"));
        assertThat(cool.step(Step.PLANT_OUT).why()).contains("50 °F");
        assertThat(timeline.noteWords(Units.AMERICAN)).noneMatch(note -> note.contains("°C"));
    }

    @Test
    void the_southern_spring_works() {
        FrostDates dates = FrostDates.of(LocalDate.of(2027, 10, 12), LocalDate.of(2028, 5, 1));

        Asked pepper = Asked.of(Crops.PEPPER, 26, dates).on(LocalDate.of(2027, 7, 1));

        assertThat(pepper.answered().verdict()).isEqualTo(Verdict.IN_TIME);
        assertThat(pepper.step(Step.SOW).ideal()).isEqualTo(LocalDate.of(2027, 8, 10));
        assertThat(pepper.step(Step.RIPE).latest()).isBefore(LocalDate.of(2028, 5, 1));
    }

    @Test
    void the_leap_day_is_a_day_like_any_other() {
        Asked pepper = Asked.of(Crops.PEPPER, 26, LocalDate.of(2028, 5, 2)).on(LocalDate.of(2028, 1, 1));

        assertThat(pepper.step(Step.PLANT_OUT).ideal()).isEqualTo(LocalDate.of(2028, 5, 9));
        assertThat(pepper.step(Step.SOW).ideal()).isEqualTo(LocalDate.of(2028, 2, 29));
    }

    @Test
    void where_no_frost_is_to_be_feared_any_day_will_do() {
        Timeline timeline = Asked.of(Crops.PEPPER, 26, new FrostDates(null, null, null))
                .on(LocalDate.of(2027, 8, 3))
                .answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.IN_TIME);
        assertThat(timeline.step(Step.SOW).orElseThrow().ideal()).isEqualTo(LocalDate.of(2027, 8, 3));
        assertThat(timeline.noteWords(Units.METRIC)).anyMatch(note -> note.contains("any day"));
    }

    @ParameterizedTest
    @MethodSource("crops")
    void no_step_goes_back_in_time(Crop crop) {
        double matC = CropCatalogue.bundled().responseOf(crop).bestC();
        for (FrostDates dates : List.of(
                FrostDates.of(LocalDate.of(2027, 3, 15), LocalDate.of(2027, 11, 20)),
                new FrostDates(LocalDate.of(2028, 5, 14), LocalDate.of(2028, 5, 26), LocalDate.of(2028, 9, 20)),
                new FrostDates(LocalDate.of(2027, 6, 10), LocalDate.of(2027, 7, 5), LocalDate.of(2027, 8, 20)),
                FrostDates.of(LocalDate.of(2027, 10, 12), LocalDate.of(2028, 4, 30)),
                new FrostDates(null, null, null))) {
            for (int month = 1; month <= 12; month++) {
                Asked asked = Asked.of(crop, matC, dates).on(LocalDate.of(2027, month, 1));
                assertRunsForward(asked.answered());
                assertRunsForward(asked.inBag().answered());
                assertRunsForward(
                        asked.having(Seen.sownOn(LocalDate.of(2027, month, 1))).answered());
            }
        }
    }

    static List<Crop> crops() {
        return CropCatalogue.bundled().all();
    }

    private static void assertRunsForward(Timeline timeline) {
        TimelineStep before = null;
        for (TimelineStep step : timeline.steps()) {
            assertThat(step.earliest()).isBeforeOrEqualTo(step.ideal());
            assertThat(step.ideal()).isBeforeOrEqualTo(step.latest());
            assertThat(step.why()).isNotBlank().endsWith(".");
            if (before != null) {
                assertThat(step.step()).isGreaterThan(before.step());
                assertThat(step.earliest()).isAfterOrEqualTo(before.earliest());
                assertThat(step.ideal()).isAfterOrEqualTo(before.ideal());
                assertThat(step.latest()).isAfterOrEqualTo(before.latest());
            }
            before = step;
        }
        assertThat(timeline.step(Step.SOW).or(() -> timeline.step(Step.LAY_ROOTS)))
                .isPresent();
        assertThat(timeline.step(Step.PLANT_OUT)).isPresent();
    }
}
