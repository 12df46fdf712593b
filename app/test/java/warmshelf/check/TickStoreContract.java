package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.ENTRY;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.decision.Decision;
import warmshelf.seed.Lot;
import warmshelf.seed.Recount;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.AskedOf;
import warmshelf.web.Decisions;
import warmshelf.words.Units;

abstract class TickStoreContract extends TickContract {
    @Test
    void a_tick_is_kept_with_who_and_when_and_moves_the_sowing_on() {
        UUID sowing = sown(room.tomsPeppers());

        TickOutcome outcome = keep(sowing, look(5).note("two are bent"));

        assertThat(outcome).isEqualTo(new TickOutcome.Kept(SowingStage.EMERGED, false, List.of()));
        assertThat(stage(sowing)).isEqualTo(SowingStage.EMERGED);
        assertThat(entries.ofSowing(database().sql(), sowing))
                .last()
                .extracting(Entry::sprouted, Entry::note, Entry::by, Entry::byName, Entry::seenOn)
                .containsExactly(5, "two are bent", room.priya(), "Priya", TODAY);
        assertThat(database()
                        .sql()
                        .fetchCount(
                                AUDIT_LINE,
                                AUDIT_LINE.SUBJECT_ID.eq(sowing.toString()).and(AUDIT_LINE.ACTION.eq("enter look"))))
                .isEqualTo(1);
    }

    @Test
    void a_look_asks_only_what_a_look_needs() {
        UUID sowing = sown(room.tomsPeppers());

        try (AskedOf asked = AskedOf.from(database())) {
            keep(sowing, look(0));

            assertThat(asked.since()).hasSize(7);
        }
    }

    @Test
    void the_same_tick_sent_twice_is_kept_once() {
        UUID sowing = sown(room.tomsPeppers());
        Draft tick = look(5);

        keep(sowing, tick);
        TickOutcome again = keep(sowing, tick);

        assertThat(again).isEqualTo(new TickOutcome.Kept(SowingStage.EMERGED, true, List.of()));
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(2);
    }

    @Test
    void the_same_look_entered_seven_times_by_one_person_is_kept_once() {
        UUID sowing = sown(room.tomsPeppers());
        Draft first = look(5);
        keep(sowing, first);

        for (int press = 2; press <= 7; press++) {
            assertThat(keep(sowing, look(5))).isEqualTo(new TickOutcome.Repeated(first.id()));
        }

        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(2);
    }

    @Test
    void a_second_look_that_tells_more_is_kept_and_so_is_what_somebody_else_saw() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, look(5));

        assertThat(keep(sowing, look(6))).isInstanceOf(TickOutcome.Kept.class);
        assertThat(keep(sowing, look(6).note("one is bent"))).isInstanceOf(TickOutcome.Kept.class);
        assertThat(ticks.keep(sowing, look(6).tick(), LIGHT_UNTIL, room.tom()))
                .isEqualTo(new Decision.Done<>(new TickOutcome.Kept(SowingStage.EMERGED, false, List.of())));
        clock.advance(Duration.ofDays(1));
        assertThat(keep(sowing, look(6).on(TODAY.plusDays(1)))).isInstanceOf(TickOutcome.Kept.class);

        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(6);
    }

    @Test
    void before_sowing_a_problem_is_noted_and_nothing_is_counted() {
        UUID sowing = room.tomsPeppers();

        assertThat(keep(sowing, step(EntryStep.LOOK).problem(Problem.SEED_MISSING)))
                .isEqualTo(new TickOutcome.Kept(SowingStage.PLANNED, false, List.of()));
        assertThat(no(sowing, look(3)))
                .isEqualTo(
                        "Refused: Pepper, sweet and mild hot · Lantern Row is not sown yet, so nothing can be up, moved"
                                + " or lost; leave the counts empty.");
        assertThat(stage(sowing)).isEqualTo(SowingStage.PLANNED);
        assertThat(keep(sowing, step(EntryStep.SOWN))).isInstanceOf(TickOutcome.Kept.class);
    }

    @Test
    void a_look_counts_again_once_the_one_before_it_was_taken_back() {
        UUID sowing = sown(room.tomsPeppers());
        Draft slip = look(0);
        keep(sowing, slip);
        keep(sowing, step(EntryStep.UNDONE).correcting(slip));

        assertThat(keep(sowing, look(0))).isInstanceOf(TickOutcome.Kept.class);
    }

    @Test
    void the_same_tick_sent_by_two_phones_at_the_same_moment_is_kept_once() throws Exception {
        UUID sowing = sown(room.tomsPeppers());
        ExecutorService phones = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 20; round++) {
                Tick tick = look(5).note("look " + round).tick();
                CyclicBarrier together = new CyclicBarrier(2);
                Callable<Decision<TickOutcome>> send = () -> {
                    together.await();
                    return ticks.keep(sowing, tick, LIGHT_UNTIL, room.priya());
                };

                List<Boolean> again = new ArrayList<>();
                for (Future<Decision<TickOutcome>> sent : phones.invokeAll(List.of(send, send))) {
                    again.add(((TickOutcome.Kept) Decisions.doneOr(sent.get(), Units.METRIC)).again());
                }

                assertThat(again).containsExactlyInAnyOrder(false, true);
            }
        } finally {
            phones.shutdownNow();
        }
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(21);
    }

    @Test
    void one_id_cannot_serve_two_sowings() {
        UUID peppers = sown(room.tomsPeppers());
        UUID tomatoes = sown(room.priyasTomatoes());
        Draft tick = look(5);
        keep(peppers, tick);

        String other = no(tomatoes, tick);

        assertThat(other).isEqualTo("Refused: This entry's id was used for another sowing already.");
        assertThat(stage(tomatoes)).isEqualTo(SowingStage.SOWN);
    }

    @Test
    void a_sowing_that_has_ended_takes_no_more_ticks() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, step(EntryStep.GAVE_UP));

        String outcome = no(sowing, look(5));

        assertThat(outcome)
                .isEqualTo(
                        "Refused: Pepper, sweet and mild hot · Lantern Row has ended (given up); nothing more is entered for it."
                                + " To mend a slip, correct the last entry.");
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(2);
    }

    @Test
    void an_unknown_sowing_is_not_found() {
        assertThat(no(UUID.randomUUID(), look(5))).isEqualTo("Missing: There is nothing at this address.");
    }

    @Test
    void a_slip_that_ended_a_sowing_is_mended_by_correcting_it() {
        UUID sowing = sown(room.tomsPeppers());
        Draft slip = step(EntryStep.GAVE_UP);
        keep(sowing, slip);

        keep(sowing, look(0).correcting(slip));

        assertThat(stage(sowing)).isEqualTo(SowingStage.SOWN);
    }

    @Test
    void a_count_that_goes_down_is_refused_but_a_correction_may_go_down() {
        UUID sowing = sown(room.tomsPeppers());
        Draft typo = look(9);
        keep(sowing, typo);

        String lower = no(sowing, look(5));
        TickOutcome corrected = keep(sowing, look(5).correcting(typo));

        assertThat(lower)
                .isEqualTo("Refused: Sprouted so far was 5, but 9 had been counted before. Counts are 'so far';"
                        + " to put an earlier count right, use 'correct' beside it.");
        assertThat(corrected).isInstanceOf(TickOutcome.Kept.class);
        assertThat(entries.ofSowing(database().sql(), sowing))
                .as("nothing is overwritten")
                .hasSize(3);
    }

    @Test
    void only_an_entry_of_this_sowing_can_be_corrected() {
        UUID peppers = sown(room.tomsPeppers());
        UUID tomatoes = sown(room.priyasTomatoes());
        Draft other = look(5);
        keep(tomatoes, other);

        assertThat(no(peppers, look(4).correcting(other)))
                .isEqualTo("Refused: The entry to correct is not one of this sowing's.");
    }

    @Test
    void an_earlier_step_can_be_put_right_after_later_ones() {
        UUID sowing = room.tomsPeppers();
        Draft sown = step(EntryStep.SOWN);
        keep(sowing, sown);
        keep(sowing, look(5));

        TickOutcome corrected =
                keep(sowing, step(EntryStep.SOWN).on(TODAY.minusDays(9)).correcting(sown));

        assertThat(corrected).isEqualTo(new TickOutcome.Kept(SowingStage.EMERGED, false, List.of()));
    }

    @Test
    void sowing_takes_its_seeds_from_the_lot_once() {
        UUID lot = lot(40);
        UUID sowing = room.peppersOf(lot);
        Draft sown = step(EntryStep.SOWN);

        keep(sowing, sown);
        keep(sowing, sown);
        keep(sowing, step(EntryStep.SOWN).on(TODAY.minusDays(1)).correcting(sown));

        assertThat(left(lot)).isEqualTo(28);
    }

    @Test
    void a_trim_is_kept_and_moves_the_sowing_to_no_other_stage() {
        UUID sowing = room.peppersOf(lot(40));
        keep(sowing, step(EntryStep.SOWN));
        keep(sowing, step(EntryStep.UNDER_LIGHT));

        TickOutcome outcome = keep(sowing, step(EntryStep.TRIMMED));

        assertThat(outcome).isInstanceOf(TickOutcome.Kept.class);
        assertThat(room.sowings().find(sowing).orElseThrow().stage()).isEqualTo(SowingStage.UNDER_LIGHT);
    }

    @Test
    void seed_put_into_the_cold_is_looked_at_soaked_and_sown_and_comes_out_of_its_lot_then() {
        UUID lot = lot(40);
        UUID sowing = room.peppersOf(lot);

        keep(sowing, step(EntryStep.CHILLED));
        assertThat(room.sowings().find(sowing).orElseThrow().stage()).isEqualTo(SowingStage.CHILLED);
        assertThat(left(lot)).isEqualTo(40);
        keep(sowing, step(EntryStep.LOOK));
        assertThat(room.sowings().find(sowing).orElseThrow().stage()).isEqualTo(SowingStage.CHILLED);
        keep(sowing, step(EntryStep.SOWN));

        assertThat(room.sowings().find(sowing).orElseThrow().stage()).isEqualTo(SowingStage.SOWN);
        assertThat(left(lot)).isEqualTo(28);
    }

    @Test
    void seed_that_was_not_sown_after_all_is_back_in_its_lot_and_held_again() {
        UUID lot = lot(40);
        UUID sowing = room.peppersOf(lot);
        Draft sown = step(EntryStep.SOWN);
        keep(sowing, sown);
        assertThat(room.balances().of(room.lots().find(lot).orElseThrow()).spokenFor())
                .as("sown seed is not spoken for, it is gone")
                .isZero();

        keep(sowing, step(EntryStep.SOAKED).correcting(sown));

        assertThat(left(lot)).isEqualTo(40);
        assertThat(room.balances().of(room.lots().find(lot).orElseThrow()).spokenFor())
                .isEqualTo(12);
        keep(sowing, step(EntryStep.SOWN));
        assertThat(left(lot)).isEqualTo(28);
    }

    @ParameterizedTest
    @CsvSource({"counted anew, 35, 35", "only the note corrected, 28, 40"})
    void a_count_made_meanwhile_rules_over_what_was_put_back(String what, int seedsLeft, int after) {
        UUID id = lot(40);
        UUID sowing = room.peppersOf(id);
        Draft sown = step(EntryStep.SOWN);
        keep(sowing, sown);
        Lot lot = room.lots().find(id).orElseThrow();
        Recount recount = new Recount(seedsLeft, lot.treated(), what, lot.source(), lot.storage());
        assertThat(room.lots().recount(id, recount, lot.version(), room.tom())).isInstanceOf(Decision.Done.class);

        keep(sowing, step(EntryStep.SOAKED).correcting(sown));

        assertThat(left(id)).isEqualTo(after);
        keep(sowing, step(EntryStep.SOWN));
        assertThat(left(id)).isEqualTo(after - 12);
    }

    @Test
    void where_a_packet_was_short_only_what_it_gave_comes_back() {
        UUID lot = lot(5);
        UUID sowing = room.peppersOf(lot);
        Draft sown = step(EntryStep.SOWN);
        keep(sowing, sown);

        keep(sowing, step(EntryStep.SOAKED).correcting(sown));

        assertThat(left(lot)).isEqualTo(5);
    }

    @Test
    void a_packet_with_fewer_seeds_than_believed_is_empty_and_never_below() {
        UUID lot = lot(5);

        TickOutcome outcome = keep(room.peppersOf(lot), step(EntryStep.SOWN));

        assertThat(outcome).isInstanceOf(TickOutcome.Kept.class);
        assertThat(left(lot)).isZero();
    }

    @Test
    void a_packet_nobody_counted_stays_uncounted() {
        UUID lot = lot(null);

        keep(room.peppersOf(lot), step(EntryStep.SOWN));

        assertThat(left(lot)).isNull();
    }

    @Test
    void entries_are_only_ever_added() {
        UUID sowing = sown(room.tomsPeppers());
        Draft first = look(3);
        keep(sowing, first);

        keep(sowing, look(4).correcting(first));

        assertThat(database()
                        .sql()
                        .select(ENTRY.SPROUTED)
                        .from(ENTRY)
                        .where(ENTRY.ID.eq(first.id()))
                        .fetchOne(ENTRY.SPROUTED))
                .isEqualTo(3);
    }
}
