package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Spot;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.Lot;
import warmshelf.seed.NewLot;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

abstract class TickStoreContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;
    private static final LocalDate LIGHT_UNTIL = LocalDate.of(2027, 5, 1);
    private static final Slot LEFT = new Slot(1, 2);

    private GrowRoom room;
    private StayStore stays;
    private EntryStore entries;
    private TickStore ticks;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        entries = new EntryStore(audit());
        ticks = new TickStore(database(), audit(), room.sowings(), entries, stays, room.lots());
    }

    @Test
    void a_tick_is_kept_with_who_and_when_and_moves_the_sowing_on() {
        UUID sowing = sown(room.tomsPeppers());

        TickOutcome outcome = keep(sowing, look(5).note("two are bent"));

        assertThat(outcome).isEqualTo(new TickOutcome.Kept(SowingStage.EMERGED, false, ""));
        assertThat(stage(sowing)).isEqualTo(SowingStage.EMERGED);
        assertThat(entries.ofSowing(database().sql(), sowing))
                .last()
                .extracting(Entry::sprouted, Entry::note, Entry::by, Entry::byName, Entry::seenOn)
                .containsExactly(5, "two are bent", room.priya(), "Priya Nair", TODAY);
        assertThat(database()
                        .sql()
                        .fetchCount(
                                AUDIT_LINE,
                                AUDIT_LINE.SUBJECT_ID.eq(sowing.toString()).and(AUDIT_LINE.ACTION.eq("enter look"))))
                .isEqualTo(1);
    }

    @Test
    void the_same_tick_sent_twice_is_kept_once() {
        UUID sowing = sown(room.tomsPeppers());
        Draft tick = look(5);

        keep(sowing, tick);
        TickOutcome again = keep(sowing, tick);

        assertThat(again).isEqualTo(new TickOutcome.Kept(SowingStage.EMERGED, true, ""));
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(2);
    }

    @Test
    void the_same_tick_sent_by_two_phones_at_the_same_moment_is_kept_once() throws Exception {
        UUID sowing = sown(room.tomsPeppers());
        ExecutorService phones = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 20; round++) {
                Tick tick = look(5).tick();
                CyclicBarrier together = new CyclicBarrier(2);
                Callable<TickOutcome> send = () -> {
                    together.await();
                    return ticks.keep(sowing, tick, LIGHT_UNTIL, room.priya());
                };

                List<Boolean> again = new ArrayList<>();
                for (Future<TickOutcome> sent : phones.invokeAll(List.of(send, send))) {
                    again.add(((TickOutcome.Kept) sent.get()).again());
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

        TickOutcome other = keep(tomatoes, tick);

        assertThat(other)
                .isEqualTo(new TickOutcome.Refused(409, "This entry's id was used for another sowing already."));
        assertThat(stage(tomatoes)).isEqualTo(SowingStage.SOWN);
    }

    @Test
    void a_sowing_that_has_ended_takes_no_more_ticks() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, step(EntryStep.GAVE_UP));

        TickOutcome outcome = keep(sowing, look(5));

        assertThat(outcome)
                .isEqualTo(new TickOutcome.Refused(
                        409,
                        "Pepper, sweet and mild hot · Lantern Row has ended (given up); nothing more is entered for it."
                                + " To mend a slip, correct the last entry."));
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(2);
    }

    @Test
    void an_unknown_sowing_is_not_found() {
        assertThat(keep(UUID.randomUUID(), look(5)))
                .isEqualTo(new TickOutcome.Refused(404, "There is no such sowing."));
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

        TickOutcome lower = keep(sowing, look(5));
        TickOutcome corrected = keep(sowing, look(5).correcting(typo));

        assertThat(lower)
                .isEqualTo(new TickOutcome.Refused(
                        409,
                        "Sprouted so far was 5, but 9 had been counted before. Counts are 'so far';"
                                + " to put an earlier count right, use 'correct' beside it."));
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

        assertThat(keep(peppers, look(4).correcting(other)))
                .isEqualTo(new TickOutcome.Refused(409, "The entry to correct is not one of this sowing's."));
    }

    @Test
    void an_earlier_step_can_be_put_right_after_later_ones() {
        UUID sowing = room.tomsPeppers();
        Draft sown = step(EntryStep.SOWN);
        keep(sowing, sown);
        keep(sowing, look(5));

        TickOutcome corrected =
                keep(sowing, step(EntryStep.SOWN).on(TODAY.minusDays(9)).correcting(sown));

        assertThat(corrected).isEqualTo(new TickOutcome.Kept(SowingStage.EMERGED, false, ""));
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
    void slow_seed_keeps_its_place_three_days_longer_when_nobody_waits_for_it() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(1));

        TickOutcome outcome = keep(sowing, look(0));

        assertThat(outcome)
                .isEqualTo(new TickOutcome.Kept(
                        SowingStage.SOWN, false, "Its place was to be free tomorrow; it keeps it until 2027-03-04."));
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(4));
        assertThat(takenOn(TODAY.plusDays(3))).isEqualTo(2);
    }

    @Test
    void slow_seed_whose_place_is_promised_is_told_to_whom() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(1));
        layOnMat(room.priyasTomatoes(), room.m1Place1(), TODAY.plusDays(2), TODAY.plusDays(9));

        TickOutcome.Kept outcome = (TickOutcome.Kept) keep(sowing, look(0));

        assertThat(outcome.remark())
                .isEqualTo("Its place is promised from tomorrow on: Place 1 on mat M1 is taken by Priya Nair's Harbour"
                        + " Light (Tomato) from 3 Mar until 9 Mar. Please tell a coordinator.");
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(1));
        assertThat(entries.ofSowing(database().sql(), sowing))
                .as("the look is kept")
                .hasSize(2);
    }

    @Test
    void a_place_that_ran_out_while_nobody_looked_is_taken_back_for_slow_seed() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.minusDays(2));

        TickOutcome.Kept outcome = (TickOutcome.Kept) keep(sowing, look(0));

        assertThat(outcome.remark())
                .isEqualTo("Its place had been free since 2027-02-27; it keeps it until 2027-03-04.");
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(4));
        assertThat(takenOn(TODAY.minusDays(1))).isEqualTo(2);
    }

    @Test
    void what_was_taken_off_the_heat_is_not_put_back_on_it() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));
        keep(sowing, step(EntryStep.OFF_HEAT));

        keep(sowing, look(4));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY);
    }

    @Test
    void a_bag_whose_cells_went_home_gets_no_place_back() {
        UUID bag = sown(room.tomsBag());
        layOnMat(bag, new Spot(room.m1Place1(), new Slot(2, 1), TODAY.minusDays(10), TODAY.plusDays(5)));
        keep(bag, look(6));
        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(6).done());
        keep(bag, look(0));
        keep(bag, look(3));

        assertThat(stays(bag)).extracting(Stay::to).containsExactly(TODAY);
    }

    @Test
    void seed_whose_place_is_kept_for_days_to_come_is_not_extended() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(2));

        keep(sowing, look(0));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(2));
    }

    @Test
    void moving_to_light_ends_the_stay_on_the_mat_that_day_and_takes_the_place_under_the_light() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        TickOutcome outcome = keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));

        assertThat(outcome).isEqualTo(new TickOutcome.Kept(SowingStage.UNDER_LIGHT, false, ""));
        assertThat(stays(sowing))
                .extracting(Stay::kind, Stay::from, Stay::to)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("mat", TODAY.minusDays(10), TODAY),
                        org.assertj.core.groups.Tuple.tuple("lit", TODAY, LIGHT_UNTIL));
        assertThat(database()
                        .sql()
                        .fetchCount(QUARTER_DAY, QUARTER_DAY.KIND.eq("mat").and(QUARTER_DAY.ON_DAY.ge(TODAY))))
                .isZero();
    }

    @Test
    void going_home_ends_the_stay_and_takes_no_other_place() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        keep(sowing, step(EntryStep.UNDER_LIGHT));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY);
    }

    @Test
    void a_clash_under_the_light_refuses_the_whole_tick_and_keeps_nothing() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));
        UUID other = sown(room.priyasTomatoes());
        keep(other, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));

        TickOutcome outcome = keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));

        assertThat(outcome)
                .isEqualTo(new TickOutcome.Refused(
                        409,
                        "Place 1 under the light is taken by Priya Nair's Harbour Light (Tomato)"
                                + " from 1 Mar until 30 Apr."));
        assertThat(stage(sowing)).isEqualTo(SowingStage.SOWN);
        assertThat(entries.ofSowing(database().sql(), sowing)).hasSize(1);
        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(5));
    }

    @Test
    void a_place_that_is_under_no_light_is_refused() {
        UUID sowing = sown(room.tomsPeppers());

        assertThat(keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.m1Place1(), LEFT)))
                .isEqualTo(new TickOutcome.Refused(
                        409, "There is no such place under a light; please choose one from the list."));
    }

    @Test
    void a_look_never_gives_a_place_away() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        keep(sowing, look(3).to(room.lit1(), LEFT));

        assertThat(stays(sowing))
                .extracting(Stay::kind, Stay::to)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("mat", TODAY.plusDays(5)));
    }

    @Test
    void a_bag_moved_in_part_stays_on_the_mat_while_its_cells_lie_under_the_light() {
        UUID bag = sown(room.tomsBag());
        layOnMat(bag, new Spot(room.m1Place1(), new Slot(2, 1), TODAY.minusDays(10), TODAY.plusDays(5)));
        keep(bag, look(6));

        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(4).to(room.lit1(), LEFT));
        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(6).to(room.lit2(), LEFT));

        assertThat(stage(bag)).isEqualTo(SowingStage.SPROUTING);
        assertThat(stays(bag))
                .extracting(Stay::kind, Stay::placeId, Stay::to)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("mat", room.m1Place1(), TODAY.plusDays(5)),
                        org.assertj.core.groups.Tuple.tuple("lit", room.lit1(), LIGHT_UNTIL));

        keep(bag, step(EntryStep.MOVED_TO_CELLS).moved(6).done());

        assertThat(stage(bag)).isEqualTo(SowingStage.IN_CELLS);
        assertThat(stays(bag))
                .extracting(Stay::kind, Stay::to)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("mat", TODAY),
                        org.assertj.core.groups.Tuple.tuple("lit", LIGHT_UNTIL));
    }

    @Test
    void hardening_off_frees_the_place_under_the_light() {
        UUID sowing = sown(room.tomsPeppers());
        keep(sowing, step(EntryStep.UNDER_LIGHT).to(room.lit1(), LEFT));
        clock.advance(Duration.ofDays(40));

        keep(sowing, step(EntryStep.HARDENING_OFF).on(TODAY.plusDays(40)));

        assertThat(stays(sowing)).extracting(Stay::to).containsExactly(TODAY.plusDays(40));
        assertThat(takenOn(TODAY.plusDays(39))).isEqualTo(2);
        assertThat(takenOn(TODAY.plusDays(40))).isZero();
    }

    @Test
    void giving_up_frees_the_place_on_the_mat() {
        UUID sowing = sown(room.tomsPeppers());
        layOnMat(sowing, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(5));

        keep(sowing, step(EntryStep.GAVE_UP));

        assertThat(takenOn(TODAY)).isZero();
        assertThat(takenOn(TODAY.minusDays(1))).isEqualTo(2);
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

    private UUID sown(UUID sowing) {
        assertThat(keep(sowing, step(EntryStep.SOWN).on(TODAY.minusDays(10)))).isInstanceOf(TickOutcome.Kept.class);
        return sowing;
    }

    private TickOutcome keep(UUID sowing, Draft draft) {
        return ticks.keep(sowing, draft.tick(), LIGHT_UNTIL, room.priya());
    }

    private void layOnMat(UUID sowing, UUID place, LocalDate from, LocalDate to) {
        layOnMat(sowing, new Spot(place, LEFT, from, to));
    }

    private void layOnMat(UUID sowing, Spot spot) {
        database().sql().transaction(tx -> stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.tom()));
    }

    private UUID lot(@Nullable Integer seeds) {
        return room.lots().add(new NewLot("pepper", "Lantern Row", 2026, seeds, null, false, ""), room.tom());
    }

    private @Nullable Integer left(UUID lot) {
        return room.lots().find(lot).map(Lot::seedsLeft).orElse(null);
    }

    private SowingStage stage(UUID sowing) {
        return room.sowings().find(sowing).orElseThrow().stage();
    }

    private List<Stay> stays(UUID sowing) {
        return StayBookStore.ofSowing(database().sql(), sowing);
    }

    private int takenOn(LocalDate day) {
        return database().sql().fetchCount(QUARTER_DAY, QUARTER_DAY.ON_DAY.eq(day));
    }

    private static Draft look(int sprouted) {
        Draft draft = new Draft(EntryStep.LOOK);
        draft.sprouted = sprouted;
        return draft;
    }

    private static Draft step(EntryStep step) {
        return new Draft(step);
    }

    /** A tick in the making; one draft is one entry, however often it is sent. */
    private static final class Draft {
        private final UUID id = UUID.randomUUID();
        private final EntryStep step;
        private LocalDate seenOn = TODAY;
        private @Nullable Integer sprouted;
        private @Nullable Integer moved;
        private boolean finished;
        private String note = "";
        private Tick.@Nullable LightPlace light;
        private @Nullable UUID supersedes;

        Draft(EntryStep step) {
            this.step = step;
        }

        UUID id() {
            return id;
        }

        Draft on(LocalDate day) {
            seenOn = day;
            return this;
        }

        Draft moved(int count) {
            moved = count;
            return this;
        }

        Draft done() {
            finished = true;
            return this;
        }

        Draft note(String text) {
            note = text;
            return this;
        }

        Draft to(UUID place, Slot slot) {
            light = new Tick.LightPlace(place, slot);
            return this;
        }

        Draft correcting(Draft other) {
            supersedes = other.id;
            return this;
        }

        Tick tick() {
            return new Tick(id, step, seenOn, sprouted, moved, null, finished, null, note, light, supersedes);
        }
    }
}
