package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Method;

class HalfCameTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 3, 1);

    private final List<Entry> entries = new ArrayList<>();

    @Test
    void half_came_between_the_last_look_with_fewer_and_the_first_with_half() {
        sown();
        look(7, 0);
        look(8, 2);
        look(10, 5);
        look(14, 9);
        enter(16, EntryStep.OFF_HEAT, null, false, null);

        assertThat(HalfCame.of(Method.CELLS, 12, entries)).contains(new HalfCame(8, 10));
    }

    @Test
    void while_more_is_waited_for_nobody_knows_what_half_is() {
        sown();
        look(8, 2);
        look(10, 5);

        assertThat(HalfCame.of(Method.CELLS, 12, entries)).isEmpty();
    }

    @Test
    void once_every_seed_is_up_nothing_more_is_waited_for() {
        sown();
        look(8, 2);
        look(10, 12);

        assertThat(HalfCame.of(Method.CELLS, 12, entries)).contains(new HalfCame(8, 10));
    }

    @Test
    void a_look_without_a_count_says_nothing_of_how_many_had_come() {
        sown();
        look(7, 0);
        enter(9, EntryStep.LOOK, null, false, null);
        look(10, 6);
        enter(12, EntryStep.UNDER_LIGHT, null, false, null);

        assertThat(HalfCame.of(Method.CELLS, 12, entries)).contains(new HalfCame(7, 10));
    }

    @Test
    void seed_found_at_the_first_look_came_some_time_since_it_was_sown() {
        sown();
        look(9, 8);
        enter(12, EntryStep.UNDER_LIGHT, null, false, null);

        assertThat(HalfCame.of(Method.CELLS, 12, entries)).contains(new HalfCame(0, 9));
    }

    @Test
    void in_a_bag_roots_count_until_the_bag_is_done_with_and_seedlings_after_that_do_not() {
        sown();
        look(5, 1);
        look(6, 6);
        enter(7, EntryStep.MOVED_TO_CELLS, 8, true, null);
        look(9, 0);
        look(12, 12);

        assertThat(HalfCame.of(Method.BAG, 12, entries)).contains(new HalfCame(5, 6));
    }

    @Test
    void nothing_came_or_nobody_counted_or_it_was_never_sown() {
        assertThat(HalfCame.of(Method.CELLS, 12, entries)).isEmpty();
        sown();
        look(20, 0);
        enter(30, EntryStep.GAVE_UP, null, false, null);
        assertThat(HalfCame.of(Method.CELLS, 12, entries)).isEmpty();

        entries.clear();
        sown();
        enter(12, EntryStep.UNDER_LIGHT, null, false, null);
        assertThat(HalfCame.of(Method.CELLS, 12, entries)).isEmpty();
    }

    @Test
    void corrected_and_undone_entries_do_not_count() {
        sown();
        UUID mistyped = look(6, 11);
        look(9, 10);
        enter(12, EntryStep.UNDER_LIGHT, null, false, null);
        enter(6, EntryStep.LOOK, 0, false, mistyped);
        assertThat(HalfCame.of(Method.CELLS, 12, entries)).contains(new HalfCame(6, 9));

        UUID light = entries.get(3).id();
        enter(13, EntryStep.UNDONE, null, false, light);
        assertThat(HalfCame.of(Method.CELLS, 12, entries)).isEmpty();
    }

    @Test
    void two_looks_on_one_day_tell_no_more_than_the_day() {
        sown();
        look(8, 1);
        look(8, 9);
        enter(12, EntryStep.UNDER_LIGHT, null, false, null);

        assertThat(HalfCame.of(Method.CELLS, 12, entries)).contains(new HalfCame(7, 8));
    }

    private void sown() {
        enter(0, EntryStep.SOWN, null, false, null);
    }

    private UUID look(int day, int sprouted) {
        return enter(day, EntryStep.LOOK, sprouted, false, null);
    }

    private UUID enter(
            int day, EntryStep step, @Nullable Integer sprouted, boolean finished, @Nullable UUID supersedes) {
        UUID id = UUID.randomUUID();
        LocalDate on = SOWN.plusDays(day);
        entries.add(new Entry(
                id,
                new UUID(3, 3),
                step,
                on,
                on.atTime(9, entries.size()).atOffset(ZoneOffset.UTC),
                sprouted,
                null,
                null,
                finished,
                null,
                "",
                supersedes,
                new UUID(4, 4),
                "Tom"));
        return id;
    }
}
