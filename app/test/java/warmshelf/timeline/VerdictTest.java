package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class VerdictTest {
    private static final LocalDate LAST = LocalDate.of(2027, 5, 24);
    private static final Asked PEPPER = Asked.of(Crops.PEPPER, 26, FrostDates.of(LAST, LocalDate.of(2027, 9, 20)));

    // Latest sowing 29 March. Sown on 4 May: ready 9 weeks later, 6 July; half ripe 75 days later, 19 September. Sown
    // on
    // 9 May: the first ripe 70 days after 11 July, 19 September. Of the quickest kinds, 58 days from transplanting
    // (Iowa State
    // University Extension 1993, 'Gypsy'): sown on 21 May, out on 23 July, ripe on 19 September.
    @ParameterizedTest
    @CsvSource({
        "2027-01-01, IN_TIME",
        "2027-03-29, IN_TIME",
        "2027-03-30, HURRY",
        "2027-05-04, HURRY",
        "2027-05-05, TIGHT",
        "2027-05-09, TIGHT",
        "2027-05-10, TIGHT",
        "2027-05-21, TIGHT",
        "2027-05-22, TOO_LATE",
        "2027-08-01, TOO_LATE"
    })
    void the_verdict_turns_the_day_after_each_limit(LocalDate today, Verdict verdict) {
        assertThat(PEPPER.on(today).answered().verdict()).isEqualTo(verdict);
    }

    @Test
    void when_it_is_too_late_to_sow_bought_plants_are_named() {
        Timeline late = PEPPER.on(LocalDate.of(2027, 6, 20)).answered();

        assertThat(late.noteWords(Units.METRIC))
                .anyMatch(note -> note.contains("21 May") && note.contains("Buy plants"));
    }

    @Test
    void when_even_bought_plants_come_too_late_a_quicker_crop_is_named() {
        Timeline late = PEPPER.on(LocalDate.of(2027, 8, 1)).answered();

        assertThat(late.noteWords(Units.METRIC)).anyMatch(note -> note.contains("choose a quicker crop"));
    }

    @Test
    void whoever_hurries_is_told_to_sow_today() {
        LocalDate today = LocalDate.of(2027, 4, 15);

        Asked hurry = PEPPER.on(today);

        assertThat(hurry.step(Step.SOW).ideal()).isEqualTo(today);
        assertThat(hurry.step(Step.SOW).latest()).isEqualTo(LocalDate.of(2027, 5, 9));
        assertThat(hurry.step(Step.PLANT_OUT).ideal()).isEqualTo(today.plusWeeks(9));
    }

    @Test
    void a_season_too_short_for_the_quickest_kinds_is_too_late_from_the_start() {
        Timeline timeline = Asked.of(Crops.PEPPER, 26, FrostDates.of(LAST, LocalDate.of(2027, 7, 28)))
                .answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(timeline.noteWords(Units.METRIC))
                .anyMatch(note -> note.contains("58 to 62 days") && note.contains("quicker crop"));
    }

    @Test
    void a_season_too_short_for_most_kinds_asks_for_a_quick_one() {
        Timeline timeline = Asked.of(Crops.PEPPER, 26, FrostDates.of(LAST, LocalDate.of(2027, 8, 11)))
                .answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(timeline.noteWords(Units.METRIC)).anyMatch(note -> note.contains("58 to 62 days"));
    }

    // 69 days between planting out and the frost: fewer than the 70 of the usual kinds, enough for early ones, which
    // take 42 to
    // 60 (Colorado Master Gardeners 2020: 50 to 60; National Gardening Association: one kind at 42).
    @Test
    void tomato_in_69_days_is_for_the_quickest_kinds_alone_and_they_are_named() {
        LocalDate frost = LAST.plusDays(69);

        Timeline timeline =
                Asked.of(Crops.TOMATO, 26, FrostDates.of(LAST, frost)).answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(timeline.quickest().orElseThrow().alone()).isTrue();
        assertThat(timeline.quickest().orElseThrow().days().words()).isEqualTo("45 to 60 days from planting out");
        assertThat(timeline.noteWords(Units.METRIC))
                .anyMatch(note -> note.startsWith("Only the quickest kinds: about 45 to 60 days from planting out.")
                        && note.contains("8 July"));
        assertThat(timeline.harvest().orElseThrow().first()).isEqualTo(frost.plusDays(1));
    }

    @Test
    void a_variety_whose_own_days_are_known_is_not_saved_by_quicker_kinds() {
        Crop slow = Crops.TOMATO.withMaturity(Optional.of(new DaysToMaturity(70, 75, Basis.TRANSPLANTING, true)));

        Timeline timeline =
                Asked.of(slow, 26, FrostDates.of(LAST, LAST.plusDays(69))).answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(timeline.quickest()).isEmpty();
    }

    @Test
    void frost_in_every_month_leaves_only_cover() {
        FrostDates dates =
                new FrostDates(LocalDate.of(2027, 6, 20), LocalDate.of(2027, 7, 20), LocalDate.of(2027, 7, 15));

        Timeline timeline = Asked.of(Crops.PEPPER, 26, dates).answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(timeline.noteWords(Units.METRIC)).anyMatch(note -> note.contains("under cover only"));
        assertThat(Asked.of(Crops.KALE, 20, dates).answered().verdict())
                .as("what bears frost is not kept in by it")
                .isNotEqualTo(Verdict.TOO_LATE);
    }

    // Marigolds: no days to maturity; planting out ends 14 days after the frost, four weeks later is the limit.
    @ParameterizedTest
    @CsvSource({"2027-04-19, IN_TIME", "2027-04-20, HURRY", "2027-05-24, HURRY", "2027-05-25, TOO_LATE"})
    void flowers_may_be_planted_out_four_weeks_late(LocalDate today, Verdict verdict) {
        assertThat(Asked.of(Crops.MARIGOLD, 21, LAST).on(today).answered().verdict())
                .isEqualTo(verdict);
    }

    @Test
    void once_sown_in_time_the_verdict_stays_in_time_after_the_last_sowing_day() {
        Timeline timeline = PEPPER.on(LocalDate.of(2027, 4, 10))
                .having(Asked.seen(LocalDate.of(2027, 3, 22), LocalDate.of(2027, 3, 30)))
                .answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.IN_TIME);
    }

    @Test
    void plants_sown_far_too_late_are_not_expected_to_ripen() {
        Timeline timeline = PEPPER.on(LocalDate.of(2027, 6, 20))
                .having(Seen.sownOn(LocalDate.of(2027, 6, 15)))
                .answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(timeline.noteWords(Units.METRIC)).anyMatch(note -> note.contains("not expected to ripen"));
    }

    @Test
    void under_cover_a_late_day_still_hurries() {
        Asked cover = Asked.of(Crops.TOMATO, 26, new PlantingOut.UnderCover(LocalDate.of(2027, 4, 20)));

        assertThat(cover.on(LocalDate.of(2027, 3, 16)).answered().verdict()).isEqualTo(Verdict.IN_TIME);
        assertThat(cover.on(LocalDate.of(2027, 3, 17)).answered().verdict()).isEqualTo(Verdict.HURRY);
        assertThat(cover.on(LocalDate.of(2027, 6, 1)).answered().verdict()).isEqualTo(Verdict.TOO_LATE);
    }
}
