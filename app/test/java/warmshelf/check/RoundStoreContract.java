package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.STAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.label.LabelRunStore;
import warmshelf.seed.NewLot;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.History;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.Problem;
import warmshelf.sowing.ProblemAnswer;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.AskedOf;

/** A round that was kept and renewed is the round that one would read who comes for the first time. */
abstract class RoundStoreContract extends TickContract {
    private SowingStores stores;
    private RoundStore kept;
    private UUID peppers;
    private UUID tomatoes;

    @BeforeEach
    void keepARound() {
        stores = SowingStores.over(database(), audit(), FrostSource.bundledOnly());
        kept = CheckRoom.rounds(stores);
        peppers = room.tomsPeppers();
        layOnMat(peppers, room.m1Place1(), TODAY.minusDays(10), TODAY.plusDays(10));
        sown(peppers);
        tomatoes = sown(room.priyasTomatoes());
        isAsReadAnew("at first");
    }

    @Test
    void a_look_a_step_a_correction_and_a_withdrawal_are_in_it() {
        Draft look = look(3);
        keep(peppers, look);
        isAsReadAnew("a look");
        keep(peppers, look(2).correcting(look));
        isAsReadAnew("a correction");
        keep(tomatoes, step(EntryStep.GAVE_UP));
        isAsReadAnew("given up");
        UUID bag = room.tomsBag();
        isAsReadAnew("a new sowing");
        stores.histories().withdraw(bag, room.tom());
        isAsReadAnew("withdrawn");
    }

    @Test
    void a_stay_that_is_moved_and_a_mat_that_is_set_otherwise_are_in_it() {
        database()
                .sql()
                .update(STAY)
                .set(STAY.TO_DAY, TODAY.plusDays(1))
                .set(STAY.VERSION, STAY.VERSION.plus(1))
                .where(STAY.SOWING_ID.eq(peppers))
                .execute();
        isAsReadAnew("a stay");
        database().sql().update(MAT_DAY).set(MAT_DAY.CELSIUS, 28.0).execute();
        isAsReadAnew("set-points");
    }

    @Test
    void a_held_rack_its_problem_and_what_was_answered_are_in_it() {
        Draft aphids = look(1).problem(Problem.PESTS);
        keep(peppers, aphids);
        isAsReadAnew("a problem that holds the rack");
        NotedProblem noted = kept.unanswered(room.tom(), TODAY).get(0);
        stores.problems().answer(noted, ProblemAnswer.Word.SEEN, room.tom());
        isAsReadAnew("an answer");
        assertThat(kept.unanswered(room.tom(), TODAY)).isEmpty();
        keep(peppers, look(1).correcting(aphids));
        isAsReadAnew("there was none");
    }

    @Test
    void labels_names_and_varieties_are_in_it() {
        new LabelRunStore(database(), audit()).label(List.of(history(peppers)), room.tom());
        isAsReadAnew("labels");
        database().sql().update(LOT).set(LOT.VARIETY, "Other Row").execute();
        isAsReadAnew("varieties");
        database()
                .sql()
                .update(MEMBER)
                .set(MEMBER.CALLED, "Tam")
                .where(MEMBER.ID.eq(room.tom()))
                .execute();
        isAsReadAnew("a name");
    }

    @Test
    void a_members_own_round_is_cut_from_nothing_and_the_same() {
        keep(tomatoes, look(2));
        isAsReadAnew("a look");

        assertThat(kept.of(room.tom(), TODAY).walk())
                .extracting(step ->
                        Objects.requireNonNull(step.item()).subject().sowing().id())
                .containsExactly(peppers);
    }

    @Test
    void what_is_written_elsewhere_has_no_sowing_read_anew_and_a_look_has_one() {
        try (AskedOf asked = AskedOf.from(database())) {
            room.lots().add(new NewLot("pepper", "Third Row", 2026, 40, room.tom(), false, ""), room.tom());
            asked.since();

            kept.whole(TODAY);
            assertThat(entriesRead(asked)).isZero();

            keep(peppers, look(2));
            asked.since();
            kept.whole(TODAY);
            assertThat(entriesRead(asked)).isEqualTo(1);
            kept.whole(TODAY);
            assertThat(asked.since()).isEmpty();
        }
    }

    private static long entriesRead(AskedOf asked) {
        return asked.since().stream()
                .filter(sql -> sql.contains("select entry.*"))
                .count();
    }

    private void isAsReadAnew(String after) {
        RoundStore anew = CheckRoom.rounds(stores);
        assertThat(lines(kept.whole(TODAY))).as(after).isEqualTo(lines(anew.whole(TODAY)));
        for (UUID member : List.of(room.tom(), room.priya())) {
            assertThat(lines(kept.of(member, TODAY))).as(after).isEqualTo(lines(anew.of(member, TODAY)));
            assertThat(kept.held(member, false, TODAY)).as(after).isEqualTo(anew.held(member, false, TODAY));
            assertThat(kept.told(member, TODAY)).as(after).isEqualTo(anew.told(member, TODAY));
            assertThat(kept.unansweredOfOthers(member, TODAY))
                    .as(after)
                    .isEqualTo(anew.unansweredOfOthers(member, TODAY));
        }
    }

    private static List<Object> lines(Round round) {
        List<Object> lines = new ArrayList<>(RoundLines.of(round, TODAY));
        round.walk().stream()
                .map(Round.Step::item)
                .filter(Objects::nonNull)
                .forEach(item -> lines.add(List.of(
                        item.subject().sowing(),
                        String.valueOf(item.hold()),
                        String.valueOf(item.booked()),
                        String.valueOf(item.doneToday()),
                        item.problems(),
                        item.unlabelled(),
                        item.underLight())));
        return lines;
    }

    private History history(UUID sowing) {
        return stores.histories().find(sowing).orElseThrow();
    }
}
