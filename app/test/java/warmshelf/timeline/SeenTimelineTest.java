package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.Crops;
import warmshelf.words.Units;

class SeenTimelineTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 3, 22);
    private static final Asked PEPPER =
            Asked.of(Crops.PEPPER, 26, FrostDates.of(LocalDate.of(2027, 5, 24), LocalDate.of(2027, 9, 20)));

    @Test
    void a_step_that_was_seen_is_dated_on_that_day() {
        TimelineStep sow = PEPPER.on(SOWN).having(Seen.sownOn(SOWN)).step(Step.SOW);

        assertThat(sow.done()).isEqualTo(SOWN);
        assertThat(sow.earliest()).isEqualTo(SOWN);
        assertThat(sow.latest()).isEqualTo(SOWN);
        assertThat(sow.why()).contains("22 March");
    }

    @Test
    void a_soak_that_was_skipped_is_no_longer_asked_for() {
        assertThat(PEPPER.on(SOWN).having(Seen.sownOn(SOWN)).answered().step(Step.SOAK))
                .isEmpty();
    }

    @Test
    void soaked_seed_is_sown_the_next_day() {
        LocalDate soaked = LocalDate.of(2027, 3, 25);
        Seen seen = new Seen(null, soaked, null, null, null, null, null, null, null, null, null, null, null);

        Asked asked = PEPPER.on(soaked).having(seen);

        assertThat(asked.step(Step.SOAK).done()).isEqualTo(soaked);
        assertThat(asked.step(Step.SOW).ideal()).isEqualTo(LocalDate.of(2027, 3, 26));
    }

    @Test
    void seedlings_that_come_up_early_bring_light_and_feed_forward_but_not_planting_out() {
        LocalDate up = LocalDate.of(2027, 3, 26);

        Asked early = PEPPER.on(up).having(Asked.seen(SOWN, up));

        assertThat(early.step(Step.OFF_HEAT).ideal()).isEqualTo(up);
        assertThat(early.step(Step.LIGHT).ideal()).isEqualTo(up);
        assertThat(early.step(Step.FIRST_FEED).ideal()).isEqualTo(up.plusDays(12));
        assertThat(early.step(Step.PLANT_OUT).ideal()).isEqualTo(LocalDate.of(2027, 5, 31));
        assertThat(early.answered().noteWords(Units.METRIC))
                .anyMatch(note -> note.contains("Up 4 days sooner") && note.contains("31 May"));
    }

    @Test
    void seedlings_that_come_up_late_move_everything_after_them() {
        LocalDate up = LocalDate.of(2027, 4, 20);

        Asked late = PEPPER.on(up).having(Asked.seen(SOWN, up));

        assertThat(late.step(Step.LIGHT).ideal()).isEqualTo(up);
        assertThat(late.step(Step.POT_ON).ideal()).isEqualTo(up.plusDays(24));
        // nine weeks indoors less the ten days that coming up takes at the cool end of the band
        assertThat(late.step(Step.PLANT_OUT).ideal()).isBetween(LocalDate.of(2027, 6, 10), LocalDate.of(2027, 6, 14));
        assertThat(late.step(Step.PLANT_OUT).why()).contains("usual day was 31 May");
        assertThat(late.answered().verdict()).isEqualTo(Verdict.HURRY);
    }

    @Test
    void what_has_not_come_up_yet_cannot_come_up_in_the_past() {
        LocalDate today = LocalDate.of(2027, 4, 12);

        Asked waiting = PEPPER.on(today).having(Seen.sownOn(SOWN));

        assertThat(waiting.step(Step.LIGHT).ideal()).isEqualTo(today);
        assertThat(waiting.step(Step.FIRST_FEED).ideal()).isEqualTo(today.plusDays(12));
    }

    @Test
    void the_first_root_in_a_bag_opens_the_moving_into_cells() {
        LocalDate root = LocalDate.of(2027, 3, 25);
        Seen seen = new Seen(null, null, SOWN, root, null, null, null, null, null, null, null, null, null);

        Asked bag = PEPPER.inBag().on(root).having(seen);

        assertThat(bag.step(Step.FIRST_LOOK).done()).isEqualTo(root);
        assertThat(bag.step(Step.MOVE_TO_CELLS).ideal()).isEqualTo(root);
        assertThat(bag.step(Step.MOVE_TO_CELLS).latest()).isAfter(root);
        assertThat(bag.step(Step.LIGHT).ideal()).isAfter(root);
    }

    @Test
    void moving_into_cells_takes_a_bag_off_the_heat() {
        LocalDate moved = LocalDate.of(2027, 3, 28);
        Seen seen = new Seen(null, null, SOWN, null, moved, null, null, null, null, null, null, null, null);

        Asked bag = PEPPER.inBag().on(moved).having(seen);

        assertThat(bag.step(Step.OFF_HEAT).done()).isEqualTo(moved);
        assertThat(bag.step(Step.LIGHT).ideal()).isEqualTo(moved.plusDays(2));
    }

    @Test
    void hardening_off_begun_late_delays_planting_out_by_a_week_from_then() {
        LocalDate begun = LocalDate.of(2027, 6, 1);
        Seen seen = new Seen(null, null, SOWN, null, null, SOWN.plusDays(8), null, null, null, null, null, begun, null);

        Asked asked = PEPPER.on(begun).having(seen);

        assertThat(asked.step(Step.HARDEN_OFF).done()).isEqualTo(begun);
        assertThat(asked.step(Step.PLANT_OUT).ideal()).isEqualTo(begun.plusDays(7));
    }

    @Test
    void the_harvest_counts_from_the_real_planting_out() {
        LocalDate out = LocalDate.of(2027, 6, 3);
        Seen seen = new Seen(null, null, SOWN, null, null, null, null, null, null, null, null, null, out);

        Asked planted = PEPPER.on(out).having(seen);

        assertThat(planted.step(Step.RIPE).ideal()).isEqualTo(out.plusDays(75));
        assertThat(planted.answered().steps())
                .extracting(TimelineStep::step)
                .containsExactly(Step.SOW, Step.PLANT_OUT, Step.RIPE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void whatever_was_recorded_and_whatever_was_forgotten_the_steps_run_forward(long seed) {
        Random random = new Random(seed);
        FrostDates dates =
                new FrostDates(LocalDate.of(2027, 5, 14), LocalDate.of(2027, 5, 26), LocalDate.of(2027, 9, 20));
        for (Crop crop : CropCatalogue.bundled().all()) {
            Seen seen = randomlySeen(random);
            Asked asked = Asked.of(crop, 15 + random.nextInt(20), dates)
                    .on(LocalDate.of(2027, 1, 1).plusDays(random.nextInt(300)))
                    .having(seen);
            for (Timeline timeline : List.of(asked.answered(), asked.inBag().answered())) {
                List<TimelineStep> steps = timeline.steps();
                for (int i = 1; i < steps.size(); i++) {
                    assertThat(steps.get(i).ideal())
                            .as("%s %s %s", crop.id(), seen, steps.get(i).step())
                            .isAfterOrEqualTo(steps.get(i - 1).ideal());
                }
            }
        }
    }

    /** Days in their natural order, some of them forgotten. */
    private static Seen randomlySeen(Random random) {
        @Nullable LocalDate[] days = new LocalDate[13];
        LocalDate day = LocalDate.of(2027, 2, 1).plusDays(random.nextInt(60));
        int last = random.nextInt(14);
        for (int i = 0; i < last; i++) {
            day = day.plusDays(random.nextInt(14));
            days[i] = random.nextInt(4) == 0 ? null : day;
        }
        return new Seen(
                days[0], days[1], days[2], days[3], days[4], days[5], days[6], days[7], days[8], days[9], days[10],
                days[11], days[12]);
    }
}
