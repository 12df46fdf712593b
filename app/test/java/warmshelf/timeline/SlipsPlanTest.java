package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class SlipsPlanTest {
    private static final Crop SWEET_POTATO = Crops.of("sweet-potato");
    private static final LocalDate MAY_24 = LocalDate.of(2027, 5, 24);

    @Test
    void it_has_its_own_short_way() {
        assertThat(Asked.of(SWEET_POTATO, 26, MAY_24).answered().steps())
                .extracting(TimelineStep::step)
                .containsExactly(Step.LAY_ROOTS, Step.CUT_SLIPS, Step.HARDEN_OFF, Step.PLANT_OUT, Step.RIPE);
    }

    // Texas A&M AgriLife Extension, Starting sweet potatoes: roots are bedded 6 to 8 weeks before slips are planted,
    // those
    // without roots stand in water for a week or two, and all are hardened off about 10 days before planting.
    @Test
    void roots_are_laid_six_to_eight_weeks_ahead_and_slips_cut_a_week_or_two() {
        Asked asked = Asked.of(SWEET_POTATO, 26, MAY_24);
        LocalDate out = asked.step(Step.PLANT_OUT).ideal();

        assertThat(out).isEqualTo(MAY_24.plusDays(14));
        assertThat(asked.step(Step.LAY_ROOTS).earliest()).isEqualTo(out.minusWeeks(8));
        assertThat(asked.step(Step.LAY_ROOTS).latest()).isEqualTo(out.minusWeeks(6));
        assertThat(ChronoUnit.DAYS.between(asked.step(Step.CUT_SLIPS).ideal(), out))
                .isBetween(7L, 14L);
        assertThat(ChronoUnit.DAYS.between(asked.step(Step.HARDEN_OFF).ideal(), out))
                .isEqualTo(10);
    }

    @Test
    void no_step_says_what_only_seedlings_want() {
        Timeline timeline =
                Asked.of(SWEET_POTATO, 26, MAY_24).readIn(Units.AMERICAN).answered();

        assertThat(timeline.steps())
                .extracting(TimelineStep::why)
                .allSatisfy(why -> assertThat(why).doesNotContainIgnoringCase("leaves", "seed"));
        assertThat(timeline.noteWords(Units.AMERICAN))
                .anySatisfy(note -> assertThat(note)
                        .contains("not from seed", "half buried in damp sand or light mix at 70–80 °F", "6–8 in long"));
    }

    @Test
    void where_it_is_too_late_for_roots_slips_are_to_be_bought() {
        Timeline inTime = Asked.of(SWEET_POTATO, 26, MAY_24).answered();
        Timeline late =
                Asked.of(SWEET_POTATO, 26, MAY_24).on(LocalDate.of(2027, 7, 5)).answered();

        assertThat(Slips.dates(inTime, Units.METRIC))
                .contains("In your garden: lay roots about 19 April, cut slips about 28 May, plant out about 7 June.");
        assertThat(late.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(Slips.dates(late, Units.METRIC).orElseThrow()).contains("too late to lay roots: plant bought slips");
    }

    @Test
    void where_it_is_too_late_for_slips_too_none_are_to_be_bought() {
        Timeline late =
                Asked.of(SWEET_POTATO, 26, MAY_24).on(LocalDate.of(2027, 9, 1)).answered();

        assertThat(Slips.dates(late, Units.METRIC).orElseThrow())
                .contains("too late for this season", "90 to 100 days from planting out")
                .doesNotContain("bought");
    }

    // An extension agent in east Texas: 90 to 120 days from slips by kind; WBTW: 'Beauregard' 90 to 100.
    @Test
    void where_the_season_is_too_short_its_days_are_counted_from_slips_to_frost_and_no_day_is_called_late() {
        LocalDate frost = LocalDate.of(2027, 8, 25);
        Timeline tooShort = Asked.of(SWEET_POTATO, 26, FrostDates.of(MAY_24, frost))
                .on(LocalDate.of(2027, 1, 2))
                .answered();

        // 7 June, the earliest of planting out, to 25 August: 23 + 31 + 25 days
        assertThat(Slips.dates(tooShort, Units.METRIC).orElseThrow())
                .startsWith("In your garden its season is too short, whatever the day: slips planted out about 7 June")
                .contains("have 79 days", "90 to 100 days", "row cover")
                .doesNotContain("late");
        assertThat(tooShort.notes()).noneMatch(note -> note.words(Units.METRIC).contains("sowing"));
    }

    @Test
    void a_season_long_enough_for_the_quickest_kinds_alone_says_so() {
        Timeline quick = Asked.of(SWEET_POTATO, 26, FrostDates.of(MAY_24, LocalDate.of(2027, 9, 20)))
                .answered();

        assertThat(quick.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(quick.notes().get(0).words(Units.METRIC))
                .startsWith("Only the quickest kinds: about 90 to 100 days from planting out");
    }

    @Test
    void roots_laid_late_give_their_slips_later() {
        LocalDate today = LocalDate.of(2027, 4, 24);

        Asked late = Asked.of(SWEET_POTATO, 26, MAY_24).on(today);

        assertThat(late.step(Step.LAY_ROOTS).ideal()).isEqualTo(today);
        assertThat(late.step(Step.PLANT_OUT).ideal()).isAfterOrEqualTo(today.plusWeeks(6));
        assertThat(late.step(Step.CUT_SLIPS).ideal()).isAfterOrEqualTo(today.plusWeeks(5));
    }
}
