package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.PROBLEM_ANSWER;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.sowing.History;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.Problem;
import warmshelf.sowing.ProblemAnswer;
import warmshelf.sowing.ProblemStore;

/** Answers to a problem that Priya noted at Tom's peppers. */
abstract class ProblemStoreContract extends TickContract {
    private ProblemStore problems;
    private UUID sowing;

    @BeforeEach
    void note() {
        problems = new ProblemStore(database(), audit());
        sowing = sown(room.tomsPeppers());
        keep(sowing, look(0).problem(Problem.DRY));
    }

    @Test
    void an_answer_is_kept_with_who_and_when() {
        assertThat(problems.answer(noted().get(0), ProblemAnswer.Word.SEEN, room.tom()))
                .isTrue();

        NotedProblem seen = noted().get(0);
        assertThat(seen.seen())
                .extracting(ProblemAnswer::by, ProblemAnswer::byName, ProblemAnswer::at)
                .containsExactly(room.tom(), "Tom", audit().now());
        assertThat(database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("answer problem seen")))
                .isEqualTo(1);
    }

    @Test
    void the_same_answer_counts_once_whoever_gives_it() {
        NotedProblem dry = noted().get(0);
        problems.answer(dry, ProblemAnswer.Word.DONE, room.tom());

        assertThat(problems.answer(dry, ProblemAnswer.Word.DONE, room.priya())).isFalse();

        assertThat(noted()).isEmpty();
        assertThat(database().sql().fetchCount(PROBLEM_ANSWER)).isEqualTo(1);
    }

    @Test
    void whoever_noted_it_is_told_of_the_last_answer_until_they_put_it_away() {
        NotedProblem dry = noted().get(0);
        problems.answer(dry, ProblemAnswer.Word.SEEN, room.tom());
        problems.answer(dry, ProblemAnswer.Word.DONE, room.tom());

        assertThat(problems.told()).containsOnlyKeys(room.priya());
        assertThat(problems.told().get(room.priya()))
                .singleElement()
                .satisfies(told -> assertThat(told.answer().word()).isEqualTo(ProblemAnswer.Word.DONE));
        problems.dismiss(dry.entry().id(), room.tom());
        assertThat(problems.told()).as("it is not Tom's to put away").isNotEmpty();
        problems.dismiss(dry.entry().id(), room.priya());
        assertThat(problems.told()).isEmpty();
    }

    @Test
    void nobody_is_told_of_their_own_answer() {
        problems.answer(noted().get(0), ProblemAnswer.Word.DONE, room.priya());

        assertThat(problems.told()).isEmpty();
    }

    private List<NotedProblem> noted() {
        History history = new History(
                room.sowings().find(sowing).orElseThrow(),
                entries.ofSowing(database().sql(), sowing),
                List.of(),
                null,
                null);
        return problems.open(List.of(history)).getOrDefault(sowing, List.of());
    }
}
