package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.Method;

class ProgressTest {
    private static final int SEEDS = 12;
    private static final UUID SOWING = new UUID(3, 3);
    private static final UUID TOM = new UUID(4, 4);

    private final List<Entry> entries = new ArrayList<>();

    @Test
    void nothing_entered_is_planned() {
        Progress progress = of(Method.CELLS);

        assertThat(progress.stage()).isEqualTo(SowingStage.PLANNED);
        assertThat(progress.lastLookOn()).isNull();
    }

    @Test
    void cells_go_from_cold_to_planting_out_step_by_step() {
        List<SowingStage> stages = new ArrayList<>();
        EntryStep[] steps = {
            EntryStep.CHILLED,
            EntryStep.SOAKED,
            EntryStep.SOWN,
            EntryStep.UNDER_LIGHT,
            EntryStep.FIRST_FEED,
            EntryStep.POTTED_ON,
            EntryStep.HARDENING_OFF,
            EntryStep.PLANTED_OUT
        };
        for (int day = 0; day < steps.length; day++) {
            enter(1 + day, steps[day], null, null, false);
            stages.add(of(Method.CELLS).stage());
        }

        assertThat(stages)
                .containsExactly(
                        SowingStage.CHILLED,
                        SowingStage.SOAKED,
                        SowingStage.SOWN,
                        SowingStage.UNDER_LIGHT,
                        SowingStage.FED,
                        SowingStage.POTTED_ON,
                        SowingStage.HARDENING_OFF,
                        SowingStage.PLANTED_OUT);
        assertThat(of(Method.CELLS).seen().emerged())
                .as("who moves a tray to light need not count")
                .isEqualTo(day(4));
        assertThat(of(Method.CELLS).seen().plantedOut()).isEqualTo(day(8));
    }

    @Test
    void counts_in_cells_are_so_far_and_the_first_of_them_is_the_emergence() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(8, EntryStep.LOOK, 0, null, false);
        enter(9, EntryStep.LOOK, 4, null, false);
        enter(10, EntryStep.LOOK, 9, null, false);

        Progress progress = of(Method.CELLS);

        assertThat(progress.stage()).isEqualTo(SowingStage.EMERGED);
        assertThat(progress.up()).isEqualTo(9);
        assertThat(progress.sprouted()).isEqualTo(9);
        assertThat(progress.seen().emerged()).isEqualTo(day(9));
        assertThat(progress.seen().firstSprout()).isEqualTo(day(9));
        assertThat(progress.lastLookOn()).isEqualTo(day(10));
    }

    @Test
    void a_look_without_a_count_changes_no_count() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(9, EntryStep.LOOK, 4, null, false);
        enter(10, EntryStep.LOOK, null, null, false);

        assertThat(of(Method.CELLS).up()).isEqualTo(4);
        assertThat(of(Method.CELLS).lastLookOn()).isEqualTo(day(10));
    }

    @Test
    void off_the_heat_without_a_count_means_that_cells_are_up() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(9, EntryStep.OFF_HEAT, null, null, false);

        assertThat(of(Method.CELLS).stage()).isEqualTo(SowingStage.EMERGED);
        assertThat(of(Method.CELLS).seen().emerged()).isEqualTo(day(9));
    }

    @Test
    void in_a_bag_counts_are_roots_and_no_seedling_is_up() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(6, EntryStep.LOOK, 5, null, false);

        Progress progress = of(Method.BAG);

        assertThat(progress.stage()).isEqualTo(SowingStage.SPROUTING);
        assertThat(progress.sprouted()).isEqualTo(5);
        assertThat(progress.up()).isZero();
        assertThat(progress.waitingToMove()).isEqualTo(5);
        assertThat(progress.seen().firstSprout()).isEqualTo(day(6));
        assertThat(progress.seen().emerged()).isNull();
    }

    @Test
    void a_partial_move_leaves_the_rest_waiting_in_the_bag() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(6, EntryStep.LOOK, 5, null, false);
        enter(6, EntryStep.MOVED_TO_CELLS, null, 3, false);

        Progress progress = of(Method.BAG);

        assertThat(progress.stage()).isEqualTo(SowingStage.SPROUTING);
        assertThat(progress.waitingToMove()).isEqualTo(2);
        assertThat(progress.seen().movedToCells()).isEqualTo(day(6));
    }

    @ParameterizedTest
    @CsvSource({"12,false,IN_CELLS", "5,true,IN_CELLS", "11,false,SPROUTING"})
    void a_bag_is_done_with_when_all_has_moved_or_someone_says_so(int moved, boolean finished, SowingStage stage) {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(6, EntryStep.LOOK, 12, null, false);
        enter(7, EntryStep.MOVED_TO_CELLS, null, moved, finished);

        assertThat(of(Method.BAG).stage()).isEqualTo(stage);
    }

    @Test
    void after_the_bag_counts_are_seedlings_that_are_up() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(6, EntryStep.LOOK, 10, null, false);
        enter(7, EntryStep.MOVED_TO_CELLS, null, 10, true);
        enter(10, EntryStep.LOOK, 0, null, false);
        assertThat(of(Method.BAG).stage()).isEqualTo(SowingStage.IN_CELLS);
        enter(11, EntryStep.LOOK, 8, null, false);

        Progress progress = of(Method.BAG);

        assertThat(progress.stage()).isEqualTo(SowingStage.EMERGED);
        assertThat(progress.sprouted()).as("the roots counted stay").isEqualTo(10);
        assertThat(progress.up()).isEqualTo(8);
        assertThat(progress.seen().emerged()).isEqualTo(day(11));
        assertThat(progress.seen().firstSprout()).isEqualTo(day(6));
    }

    @Test
    void losses_are_so_far_and_leave_never_less_than_nothing() {
        enter(1, EntryStep.SOWN, null, null, false);
        lose(9, 9, 2);
        assertThat(of(Method.CELLS).alive()).isEqualTo(7);
        lose(10, 9, 11);

        assertThat(of(Method.CELLS).lost()).isEqualTo(11);
        assertThat(of(Method.CELLS).alive()).isZero();
    }

    @Test
    void a_corrected_entry_does_not_count() {
        enter(1, EntryStep.SOWN, null, null, false);
        UUID typo = enter(9, EntryStep.LOOK, 9, null, false);
        correct(typo, 9, EntryStep.LOOK, 0);

        Progress progress = of(Method.CELLS);

        assertThat(progress.stage()).isEqualTo(SowingStage.SOWN);
        assertThat(progress.up()).isZero();
        assertThat(progress.seen().emerged()).isNull();
    }

    @Test
    void entries_count_by_the_day_they_were_seen_on_and_then_as_they_came() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(9, EntryStep.LOOK, 3, null, false);
        enter(9, EntryStep.LOOK, 4, null, false);
        UUID tuesday = enter(10, EntryStep.LOOK, 7, null, false);
        correct(tuesday, 10, EntryStep.LOOK, 6);
        // Found on the doormat later: what was seen on the ninth.
        keep(new Entry(
                UUID.randomUUID(),
                SOWING,
                EntryStep.LOOK,
                day(8),
                day(12).atTime(LocalTime.NOON).atOffset(ZoneOffset.UTC),
                1,
                null,
                null,
                false,
                null,
                "",
                null,
                TOM,
                ""));
        Collections.shuffle(entries, new java.util.Random(7));

        Progress progress = of(Method.CELLS);

        assertThat(progress.up()).isEqualTo(6);
        assertThat(progress.seen().emerged()).isEqualTo(day(8));
        assertThat(progress.lastLookOn()).isEqualTo(day(10));
    }

    @Test
    void giving_up_ends_it_wherever_it_stood() {
        enter(1, EntryStep.SOWN, null, null, false);
        enter(30, EntryStep.GAVE_UP, null, null, false);

        assertThat(of(Method.CELLS).stage()).isEqualTo(SowingStage.GIVEN_UP);
    }

    private Progress of(Method method) {
        return Progress.of(method, SEEDS, entries);
    }

    private static LocalDate day(int day) {
        return LocalDate.of(2027, 3, day);
    }

    private UUID enter(int day, EntryStep step, @Nullable Integer sprouted, @Nullable Integer moved, boolean finished) {
        return add(day, step, sprouted, moved, null, finished, null);
    }

    private void lose(int day, int up, int lost) {
        add(day, EntryStep.LOOK, up, null, lost, false, null);
    }

    private void correct(UUID entry, int day, EntryStep step, int sprouted) {
        add(day, step, sprouted, null, null, false, entry);
    }

    private UUID add(
            int day,
            EntryStep step,
            @Nullable Integer sprouted,
            @Nullable Integer moved,
            @Nullable Integer lost,
            boolean finished,
            @Nullable UUID supersedes) {
        UUID id = UUID.randomUUID();
        keep(new Entry(
                id,
                SOWING,
                step,
                day(day),
                day(day).atTime(8, entries.size()).atOffset(ZoneOffset.UTC),
                sprouted,
                moved,
                lost,
                finished,
                null,
                "",
                supersedes,
                TOM,
                "Tom"));
        return id;
    }

    private void keep(Entry entry) {
        entries.add(entry);
    }
}
