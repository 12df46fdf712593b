package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.check.Cases.SOWN;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.Crops;
import warmshelf.timeline.Step;
import warmshelf.timeline.TimelineStep;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

class ChecksDueTest {
    private static final LocalDate END = SOWN.plusDays(40);

    @Test
    void a_bag_is_left_alone_before_its_first_look_day_and_looked_into_daily_from_then_on() {
        Cases bag = Cases.bag().onMat(SOWN, END).sown();
        LocalDate first = bag.on(SOWN).step(Step.FIRST_LOOK).orElseThrow().ideal();

        // Common practice: from about day seven, sooner only where the first twentieth is expected sooner.
        assertThat(first).isBetween(SOWN.plusDays(2), SOWN.plusDays(7));
        for (LocalDate day = SOWN; day.isBefore(first); day = day.plusDays(1)) {
            assertThat(bag.due(day)).as(day.toString()).isEmpty();
        }
        for (LocalDate day = first; day.isBefore(first.plusDays(9)); day = day.plusDays(1)) {
            assertThat(bag.kinds(day)).as(day.toString()).containsExactly(CheckKind.BAG_LOOK);
        }
    }

    @Test
    void all_ways_of_a_trial_are_looked_at_from_the_day_after_sowing() {
        Cases bag = Cases.bag().inTrial(false).onMat(SOWN, END).sown();
        Cases cells = Cases.cells().inTrial(false).onMat(SOWN, END).sown();

        for (int day = 0; day < 10; day++) {
            assertThat(bag.due(SOWN.plusDays(day))).hasSameSizeAs(cells.due(SOWN.plusDays(day)));
        }
        assertThat(bag.kinds(SOWN.plusDays(1))).containsExactly(CheckKind.BAG_LOOK);
        assertThat(bag.sowing().title()).endsWith(" · Lantern Row · trial 3 way B");
    }

    @Test
    void the_seed_of_a_trial_is_soaked_or_not_as_its_way_says() {
        LocalDate evening = SOWN.minusDays(1);

        assertThat(Cases.bag().inTrial(false).onMat(SOWN, END).due(evening)).isEmpty();
        assertThat(Cases.ofCrop(Crops.KALE).onMat(SOWN, END).due(evening)).isEmpty();
        assertThat(Cases.ofCrop(Crops.KALE).inTrial(true).onMat(SOWN, END).kinds(evening))
                .containsExactly(CheckKind.SOAK);
    }

    @Test
    void a_tray_of_a_trial_is_counted_on_under_the_light_until_nearly_all_should_show() {
        Cases tray = Cases.cells()
                .inTrial(false)
                .onMat(SOWN, SOWN.plusDays(9))
                .underLight(SOWN.plusDays(9), END)
                .sown()
                .looked(SOWN.plusDays(8), 5)
                .entered(SOWN.plusDays(9), EntryStep.UNDER_LIGHT);

        assertThat(tray.kinds(SOWN.plusDays(10))).containsExactly(CheckKind.CELLS_LOOK, CheckKind.LIGHT_LOOK);
        assertThat(tray.kinds(SOWN.plusDays(20))).doesNotContain(CheckKind.CELLS_LOOK);
    }

    @Test
    void a_way_without_a_mat_is_sown_on_the_day_of_its_trial() {
        Cases room = Cases.atRoomTemperature(Crops.PEPPER).inTrial(false);

        assertThat(room.due(SOWN.minusDays(1))).isEmpty();
        assertThat(room.kinds(SOWN)).containsExactly(CheckKind.SOW);
    }

    @Test
    void cells_are_looked_at_every_day_from_the_day_after_sowing() {
        Cases cells = Cases.cells().onMat(SOWN, END).sown();

        assertThat(cells.due(SOWN)).isEmpty();
        for (int day = 1; day < 15; day++) {
            assertThat(cells.kinds(SOWN.plusDays(day))).containsExactly(CheckKind.CELLS_LOOK);
        }
    }

    // The reference has lavender lie cold and moist for two to four weeks: three before it is sown on 10 March.
    @Test
    void seed_that_wants_cold_is_put_into_it_weeks_before_and_looked_at_once_a_week() {
        Cases lavender = Cases.ofCrop(Crops.of("lavender")).onMat(SOWN, END);
        LocalDate cold = SOWN.minusDays(21);

        assertThat(lavender.due(cold.minusDays(1))).isEmpty();
        assertThat(lavender.kinds(cold)).containsExactly(CheckKind.CHILL);
        assertThat(lavender.due(cold.plusDays(3)).get(0).remark()).isNull();

        lavender.entered(cold, EntryStep.CHILLED);
        for (int day = 1; day < 7; day++) {
            assertThat(lavender.due(cold.plusDays(day))).isEmpty();
        }
        assertThat(lavender.kinds(cold.plusDays(7))).containsExactly(CheckKind.CHILL_LOOK);
        lavender.entered(cold.plusDays(7), EntryStep.LOOK);
        assertThat(lavender.due(cold.plusDays(8))).isEmpty();
        assertThat(lavender.kinds(cold.plusDays(14))).containsExactly(CheckKind.CHILL_LOOK);
        assertThat(lavender.kinds(SOWN)).containsExactly(CheckKind.SOW);
    }

    @Test
    void onions_are_trimmed_once_and_the_other_steps_go_on() {
        LocalDate up = SOWN.plusDays(8);
        Cases onions = Cases.ofCrop(Crops.of("onion"))
                .underLight(up, END.plusDays(60))
                .sown()
                .entered(up, EntryStep.UNDER_LIGHT)
                .entered(up.plusDays(12), EntryStep.FIRST_FEED)
                .entered(up.plusDays(24), EntryStep.POTTED_ON);
        LocalDate trim =
                onions.on(up.plusDays(24)).step(Step.TRIM).orElseThrow().ideal();

        assertThat(onions.kinds(trim.minusDays(1))).doesNotContain(CheckKind.TRIM);
        assertThat(onions.kinds(trim)).contains(CheckKind.TRIM, CheckKind.LIGHT_LOOK);
        onions.entered(trim, EntryStep.TRIMMED);
        assertThat(onions.kinds(trim.plusDays(1))).doesNotContain(CheckKind.TRIM);
    }

    @Test
    void seed_that_wants_no_cold_is_not_put_into_it() {
        assertThat(Cases.cells().onMat(SOWN, END).due(SOWN.minusDays(21))).isEmpty();
    }

    @Test
    void a_missed_day_is_shown_with_the_last_look() {
        Cases cells = Cases.cells().onMat(SOWN, END).sown().looked(SOWN.plusDays(3), 0);

        assertThat(remark(cells, SOWN.plusDays(4))).isNull();
        // 10 March 2027 is a Wednesday, so the thirteenth is a Saturday.
        assertThat(remark(cells, SOWN.plusDays(5))).isEqualTo("Not looked at since Sat 13 Mar.");
    }

    @Test
    void a_first_look_that_was_missed_counts_from_the_day_before_it_was_due() {
        Cases bag = Cases.bag().onMat(SOWN, END).sown();
        LocalDate first = bag.on(SOWN).step(Step.FIRST_LOOK).orElseThrow().ideal();

        assertThat(remark(bag, first)).isNull();
        assertThat(remark(bag, first.plusDays(1)))
                .isEqualTo("Not looked at since " + LookFor.day(first.minusDays(1)) + ".");
    }

    @Test
    void roots_that_wait_in_the_bag_want_to_be_moved_first_and_the_look_goes_on() {
        Cases bag = Cases.bag().onMat(SOWN, END).sown().looked(SOWN.plusDays(7), 5);

        assertThat(bag.kinds(SOWN.plusDays(7))).containsExactly(CheckKind.MOVE_TO_CELLS, CheckKind.BAG_LOOK);
        assertThat(bag.due(SOWN.plusDays(8)).get(0).since()).isEqualTo(SOWN.plusDays(7));
        assertThat(bag.due(SOWN.plusDays(8)).get(0).look(Units.METRIC))
                .isEqualTo("5 with roots showing still lie in the bag.");

        bag.entered(SOWN.plusDays(8), EntryStep.MOVED_TO_CELLS, null, 5, false);
        assertThat(bag.kinds(SOWN.plusDays(8))).containsExactly(CheckKind.BAG_LOOK);
    }

    @Test
    void after_the_bag_the_cells_are_looked_at() {
        Cases bag = Cases.bag()
                .underLight(SOWN.plusDays(8), END)
                .sown()
                .looked(SOWN.plusDays(7), 12)
                .entered(SOWN.plusDays(8), EntryStep.MOVED_TO_CELLS, null, 12, true);

        assertThat(bag.kinds(SOWN.plusDays(9))).containsExactly(CheckKind.CELLS_LOOK);
        assertThat(bag.due(SOWN.plusDays(9)).get(0).look(Units.METRIC))
                .contains("surface")
                .doesNotContain("bag");
    }

    @Test
    void seedlings_that_are_up_want_off_the_heat_and_under_light() {
        Cases cells = Cases.cells()
                .onMat(SOWN, END)
                .underLight(END, END.plusDays(20))
                .sown()
                .looked(SOWN.plusDays(9), 3);

        assertThat(cells.kinds(SOWN.plusDays(9))).containsExactly(CheckKind.OFF_HEAT, CheckKind.CELLS_LOOK);
        assertThat(cells.due(SOWN.plusDays(9)).get(0).caution()).contains("Unplug the mat");
    }

    @Test
    void seedlings_that_are_up_go_home_where_no_light_is_booked_by_the_last_day_of_their_place() {
        Cases cells = Cases.cells().onMat(SOWN, END).sown().looked(SOWN.plusDays(9), 3);

        Check home = cells.due(SOWN.plusDays(9)).get(0);
        assertThat(home.kind()).isEqualTo(CheckKind.TAKE_HOME);
        assertThat(home.look(Units.METRIC))
                .isEqualTo("3 are up, and no place under a light is booked: its grower takes it home by "
                        + DayWords.day(END.minusDays(1)) + ".");
        assertThat(home.caution()).contains("Split heavy bags and trays");
        assertThat(home.remark()).isNull();
        assertThat(cells.due(END).get(0).remarkWords(Units.METRIC))
                .isEqualTo("It was due on " + DayWords.day(END.minusDays(1)) + ".");
    }

    @Test
    void what_waits_off_the_heat_still_goes_home_and_is_no_more_to_be_taken_once_it_was() {
        Cases cells = Cases.cells().onMat(SOWN, END).sown().looked(SOWN.plusDays(9), 3);
        cells.entered(SOWN.plusDays(9), EntryStep.OFF_HEAT);
        assertThat(cells.kinds(SOWN.plusDays(10))).contains(CheckKind.TAKE_HOME);

        cells.entered(SOWN.plusDays(10), EntryStep.TAKEN_HOME);

        Subject home = cells.on(SOWN.plusDays(10));
        assertThat(home.progress().stage()).isEqualTo(SowingStage.UNDER_LIGHT);
        assertThat(home.progress().seen().underLight()).isEqualTo(SOWN.plusDays(10));
        assertThat(home.step(Step.TAKE_HOME).orElseThrow().done()).isEqualTo(SOWN.plusDays(10));
        assertThat(cells.kinds(SOWN.plusDays(11))).doesNotContain(CheckKind.TAKE_HOME, CheckKind.OFF_HEAT);
    }

    @Test
    void the_way_home_stands_among_the_steps_by_its_day_in_place_of_the_groups_light() {
        List<TimelineStep> steps = Objects.requireNonNull(
                        Cases.cells().onMat(SOWN, END).sown().on(SOWN).timeline())
                .steps();

        assertThat(steps)
                .extracting(TimelineStep::step)
                .contains(Step.TAKE_HOME)
                .doesNotContain(Step.OFF_HEAT, Step.LIGHT);
        assertThat(steps).extracting(TimelineStep::ideal).isSorted();
        assertThat(steps.stream()
                        .filter(step -> step.step() == Step.TAKE_HOME)
                        .findFirst()
                        .orElseThrow())
                .satisfies(step -> {
                    assertThat(step.ideal()).isEqualTo(END.minusDays(1));
                    assertThat(step.why()).contains("kept to " + DayWords.day(END.minusDays(1)));
                });
    }

    @Test
    void slow_seed_is_remarked_on_after_nearly_all_should_show_and_not_before() {
        Cases cells = Cases.cells().onMat(SOWN, END).sown();
        int nearlyAll = cells.on(SOWN).nearlyAllBy().orElseThrow();

        assertThat(remark(lookedThrough(nearlyAll - 1), SOWN.plusDays(nearlyAll)))
                .isNull();
        assertThat(remark(lookedThrough(nearlyAll), SOWN.plusDays(nearlyAll + 1)))
                .isEqualTo(
                        "Slower than expected: nearly all should show by day %d. The chance that any more comes is about 38 %%. Give it time, or give it up."
                                .formatted(nearlyAll));
    }

    private static Cases lookedThrough(int day) {
        return Cases.cells().onMat(SOWN, END).sown().looked(SOWN.plusDays(day), 0);
    }

    @Test
    void feeding_potting_hardening_and_planting_fall_due_by_the_re_dated_timeline() {
        LocalDate up = SOWN.plusDays(9);
        Cases cells = Cases.cells()
                .underLight(up, SOWN.plusDays(150))
                .sown()
                .looked(up, 9)
                .entered(up, EntryStep.UNDER_LIGHT);

        LocalDate feed = fallsDue(cells, CheckKind.FIRST_FEED, Step.FIRST_FEED);
        // Common practice: first feed at the first true leaves, 10 to 14 days after coming up.
        assertThat(feed).isBetween(up.plusDays(10), up.plusDays(14));
        cells.entered(feed, EntryStep.FIRST_FEED);
        LocalDate pot = fallsDue(cells, CheckKind.POT_ON, Step.POT_ON);
        // Common practice: pot on three to four weeks after coming up.
        assertThat(pot).isBetween(up.plusDays(21), up.plusDays(28));
        cells.entered(pot, EntryStep.POTTED_ON);
        LocalDate harden = fallsDue(cells, CheckKind.HARDEN_OFF, Step.HARDEN_OFF);
        cells.entered(harden, EntryStep.HARDENING_OFF);
        LocalDate out = fallsDue(cells, CheckKind.PLANT_OUT, Step.PLANT_OUT);
        cells.entered(out, EntryStep.PLANTED_OUT);

        assertThat(List.of(feed, pot, harden, out)).isSorted();
        assertThat(cells.due(out)).isEmpty();
    }

    /** The day from which a step is due: as the timeline says, and not the day before. */
    private static LocalDate fallsDue(Cases cells, CheckKind kind, Step step) {
        LocalDate day = SOWN.plusDays(9);
        while (!cells.kinds(day).contains(kind)) {
            day = day.plusDays(1);
            assertThat(day).as("%s falls due some day", kind).isBefore(SOWN.plusDays(140));
        }
        assertThat(day).isEqualTo(cells.on(day).step(step).orElseThrow().ideal());
        return day;
    }

    @Test
    void later_emergence_moves_the_first_feed_by_as_many_days() {
        assertThat(feedWhenUp(14)).isEqualTo(feedWhenUp(9).plusDays(5));
    }

    private static LocalDate feedWhenUp(int day) {
        LocalDate up = SOWN.plusDays(day);
        return fallsDue(
                Cases.cells().underLight(up, END).sown().looked(up, 9).entered(up, EntryStep.UNDER_LIGHT),
                CheckKind.FIRST_FEED,
                Step.FIRST_FEED);
    }

    @Test
    void under_the_light_seedlings_are_looked_at_daily_as_long_as_they_lie_there() {
        LocalDate up = SOWN.plusDays(9);
        Cases cells = Cases.cells()
                .underLight(up, up.plusDays(3))
                .sown()
                .looked(up, 9)
                .entered(up, EntryStep.UNDER_LIGHT);

        assertThat(cells.kinds(up.plusDays(2))).containsExactly(CheckKind.LIGHT_LOOK);
        assertThat(cells.kinds(up.plusDays(3))).isEmpty();
    }

    @Test
    void what_has_ended_needs_nothing() {
        Cases givenUp = Cases.cells().onMat(SOWN, END).sown().entered(SOWN.plusDays(30), EntryStep.GAVE_UP);

        assertThat(givenUp.due(SOWN.plusDays(31))).isEmpty();
    }

    @Test
    void a_request_that_still_waits_for_a_place_is_not_due() {
        assertThat(Cases.cells().due(LocalDate.of(2027, 3, 20))).isEmpty();
    }

    @Test
    void a_placed_sowing_is_due_when_its_stay_begins_and_stays_due() {
        Cases placed = Cases.cells().onMat(SOWN, END);

        assertThat(placed.kinds(SOWN)).containsExactly(CheckKind.SOW);
        assertThat(placed.due(SOWN).get(0).remark()).isNull();
        assertThat(words(placed.due(SOWN.plusDays(2)).get(0))).isEqualTo("It was due on Wed 10 Mar.");
    }

    @Test
    void seed_that_soaks_is_put_to_soak_the_day_before() {
        Cases placed = Cases.cells().onMat(SOWN, END);

        assertThat(placed.on(SOWN.minusDays(1)).step(Step.SOAK)).isPresent();
        assertThat(placed.kinds(SOWN.minusDays(2))).isEmpty();
        assertThat(placed.kinds(SOWN.minusDays(1))).containsExactly(CheckKind.SOAK);
        placed.entered(SOWN.minusDays(1), EntryStep.SOAKED);
        assertThat(placed.kinds(SOWN.minusDays(1))).isEmpty();
        assertThat(placed.kinds(SOWN)).containsExactly(CheckKind.SOW);
    }

    @Test
    void what_needs_no_mat_is_due_on_its_ideal_day() {
        Cases lettuce = Cases.atRoomTemperature(Crops.LETTUCE);
        LocalDate today = LocalDate.of(2027, 3, 1);
        LocalDate ideal = lettuce.on(today).step(Step.SOW).orElseThrow().ideal();

        assertThat(ideal).isAfter(today);
        assertThat(lettuce.due(ideal.minusDays(2))).isEmpty();
        assertThat(lettuce.kinds(ideal)).containsExactly(CheckKind.SOW);
    }

    private static @org.jspecify.annotations.Nullable String remark(Cases cases, LocalDate today) {
        List<Check> due = cases.due(today);
        return words(due.get(due.size() - 1));
    }

    private static @org.jspecify.annotations.Nullable String words(Check check) {
        return check.remark() == null ? null : check.remarkWords(Units.METRIC);
    }
}
