package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Stay;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.History;
import warmshelf.sowing.Progress;
import warmshelf.sowing.SowingStage;

/** Ticks that waited on a phone: ordered by when they were seen, whenever they come in. */
abstract class LateTickContract extends TickContract {
    private static final OffsetDateTime NOW = TODAY.atTime(15, 0).atOffset(ZoneOffset.UTC);

    @Test
    void a_late_tick_of_an_earlier_day_with_a_lower_count_is_kept_and_the_later_day_counts() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, look(7));

        TickOutcome late = keep(sowing, look(3).seen(NOW.minusDays(2), NOW.minusDays(2)));

        assertThat(late).isEqualTo(new TickOutcome.Kept(SowingStage.EMERGED, false, List.of()));
        assertThat(progress(sowing).up()).isEqualTo(7);
        assertThat(progress(sowing).seen().emerged()).isEqualTo(TODAY.minusDays(2));
        assertThat(progress(sowing).lastLookOn()).isEqualTo(TODAY);
    }

    @Test
    void of_two_phones_that_ticked_the_same_the_one_seen_later_counts_whichever_comes_first() {
        UUID sowing = sown(room.tomsPeppers());
        OffsetDateTime page = NOW.minusHours(5);
        Draft seenLater = look(5).seen(NOW.minusHours(1), page);
        Draft seenEarlier = look(7).seen(NOW.minusHours(2), page);

        assertThat(keep(sowing, seenLater)).isInstanceOf(TickOutcome.Kept.class);
        assertThat(keep(sowing, seenEarlier)).isInstanceOf(TickOutcome.Kept.class);

        assertThat(progress(sowing).up()).isEqualTo(5);
        assertThat(doubled(sowing)).containsEntry(seenLater.id(), true).containsEntry(seenEarlier.id(), false);
    }

    @Test
    void a_count_that_goes_down_is_refused_where_the_higher_one_stood_on_the_page() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, look(7));
        clock.advance(Duration.ofHours(2));

        String lower = no(sowing, look(5).seen(NOW.plusHours(2), NOW.plusHours(1)));

        assertThat(lower).startsWith("Refused: Sprouted so far was 5, but 7 had been counted");
    }

    @Test
    void a_look_from_before_it_was_given_up_is_kept_and_it_stays_given_up() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, step(EntryStep.GAVE_UP));

        TickOutcome late = keep(sowing, look(0).seen(NOW.minusDays(1), NOW.minusDays(1)));

        assertThat(late).isInstanceOf(TickOutcome.Kept.class);
        assertThat(stage(sowing)).isEqualTo(SowingStage.GIVEN_UP);
    }

    @Test
    void the_same_step_from_two_phones_is_kept_twice_and_moves_the_tray_once() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));
        keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT).seen(NOW.minusHours(1), NOW.minusHours(4)));

        TickOutcome second = keep(
                sowing, step(EntryStep.UNDER_LIGHT).to(room.lit2(), LEFT).seen(NOW.minusHours(2), NOW.minusHours(4)));

        assertThat(second)
                .isEqualTo(new TickOutcome.Kept(SowingStage.UNDER_LIGHT, false, List.of(new PlaceRemark.Stays())));
        assertThat(stays(sowing)).extracting(Stay::placeId).containsExactly(room.m1Place1(), room.lit1());
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(3);
    }

    @Test
    void a_late_step_does_not_move_what_a_later_one_has_moved_on() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT).on(TODAY.minusDays(5)));
        keep(sowing, step(EntryStep.HARDENING_OFF));

        keep(sowing, step(EntryStep.POTTED_ON).seen(NOW.minusDays(2), NOW.minusDays(2)));

        assertThat(stage(sowing)).isEqualTo(SowingStage.HARDENING_OFF);
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY);
        assertThat(progress(sowing).seen().pottedOn()).isEqualTo(TODAY.minusDays(2));
    }

    @Test
    void a_look_is_taken_back_by_an_entry_that_counts_for_nothing_itself() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, look(2).on(TODAY.minusDays(1)));
        Draft slip = look(9);
        keep(sowing, slip);

        TickOutcome undone = keep(sowing, step(EntryStep.UNDONE).correcting(slip));

        assertThat(undone).isInstanceOf(TickOutcome.Kept.class);
        assertThat(progress(sowing).up()).isEqualTo(2);
        assertThat(progress(sowing).lastLookOn()).isEqualTo(TODAY.minusDays(1));
        assertThat(no(sowing, step(EntryStep.UNDONE).correcting(slip)))
                .isEqualTo("Refused: This entry has been corrected or taken back already.");
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(4);
    }

    @Test
    void what_moved_a_tray_is_not_simply_taken_back() {
        UUID sowing = sown(room.tomsPeppers());
        Draft moved = step(EntryStep.UNDER_LIGHT);
        keep(sowing, moved);

        assertThat(no(sowing, step(EntryStep.UNDONE).correcting(moved)))
                .isEqualTo(
                        "Refused: 'put under light' moved the sowing on and cannot simply be taken back; correct it on its page.");
        assertThat(no(sowing, step(EntryStep.UNDONE))).startsWith("Refused: ");
    }

    private Progress progress(UUID sowing) {
        return history(sowing).progress();
    }

    private java.util.Map<UUID, Boolean> doubled(UUID sowing) {
        return history(sowing).doubled();
    }

    private History history(UUID sowing) {
        java.util.List<Entry> kept = entries.ofSowing(database().sql(), sowing);
        return new History(room.sowings().find(sowing).orElseThrow(), kept, stays(sowing), null, null);
    }
}
