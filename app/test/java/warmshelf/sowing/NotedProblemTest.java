package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Method;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;

class NotedProblemTest {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);
    private static final UUID TOM = new UUID(4, 1);
    private static final UUID PRIYA = new UUID(4, 2);

    private final List<Entry> entries = new ArrayList<>();
    private final Map<UUID, List<ProblemAnswer>> answers = new HashMap<>();

    @Test
    void a_problem_waits_until_it_is_seen_and_stands_until_it_is_done() {
        UUID dry = noted(DAY, PRIYA, Problem.DRY, null);
        assertThat(open()).singleElement().satisfies(problem -> {
            assertThat(problem.problem()).isEqualTo(Problem.DRY);
            assertThat(problem.isUnanswered()).isTrue();
        });

        answered(dry, ProblemAnswer.Word.SEEN);
        assertThat(open()).singleElement().satisfies(problem -> {
            assertThat(problem.isUnanswered()).isFalse();
            assertThat(problem.seen()).isNotNull();
        });

        answered(dry, ProblemAnswer.Word.DONE);
        assertThat(open()).isEmpty();
    }

    @Test
    void a_later_look_without_it_does_not_answer_it() {
        noted(DAY, PRIYA, Problem.DRY, null);
        noted(DAY.plusDays(1), PRIYA, null, null);

        assertThat(open()).hasSize(1);
    }

    @Test
    void of_the_same_problem_only_the_last_note_counts() {
        UUID first = noted(DAY, PRIYA, Problem.DRY, null);
        UUID second = noted(DAY.plusDays(1), PRIYA, Problem.DRY, null);
        UUID mould = noted(DAY.plusDays(2), PRIYA, Problem.MOULD, null);
        assertThat(open()).extracting(problem -> problem.entry().id()).containsExactly(mould, second);

        answered(first, ProblemAnswer.Word.DONE);
        assertThat(open()).as("it came back after that").hasSize(2);
        answered(second, ProblemAnswer.Word.DONE);
        assertThat(open()).extracting(NotedProblem::problem).containsExactly(Problem.MOULD);
    }

    @Test
    void a_correction_keeps_the_answers_as_long_as_it_tells_of_the_same() {
        UUID dry = noted(DAY, PRIYA, Problem.DRY, null);
        answered(dry, ProblemAnswer.Word.DONE);

        noted(DAY, PRIYA, Problem.DRY, dry);
        assertThat(open()).isEmpty();
    }

    @Test
    void a_correction_to_another_problem_or_none_counts_as_it_stands() {
        UUID dry = noted(DAY, PRIYA, Problem.DRY, null);
        answered(dry, ProblemAnswer.Word.DONE);
        UUID wet = noted(DAY, PRIYA, Problem.WET, dry);
        assertThat(open()).extracting(NotedProblem::problem).containsExactly(Problem.WET);

        noted(DAY, PRIYA, null, wet);
        assertThat(open()).isEmpty();
    }

    @Test
    void what_growers_note_themselves_stands_without_waiting_for_an_answer() {
        noted(DAY, TOM, Problem.DRY, null);

        assertThat(open())
                .singleElement()
                .satisfies(problem -> assertThat(problem.isUnanswered()).isFalse());
    }

    @Test
    void the_grower_and_coordinators_answer_and_nobody_else() {
        noted(DAY, PRIYA, Problem.DRY, null);
        NotedProblem problem = open().get(0);

        assertThat(problem.mayBeAnsweredBy(TOM, false)).isTrue();
        assertThat(problem.mayBeAnsweredBy(PRIYA, false)).isFalse();
        assertThat(problem.mayBeAnsweredBy(PRIYA, true)).isTrue();
    }

    @Test
    void nothing_stands_at_a_sowing_that_is_over() {
        noted(DAY, PRIYA, Problem.DRY, null);

        assertThat(NotedProblem.open(sowing(SowingStage.GIVEN_UP), entries, answers))
                .isEmpty();
    }

    private List<NotedProblem> open() {
        return NotedProblem.open(sowing(SowingStage.SOWN), entries, answers);
    }

    private UUID noted(LocalDate day, UUID by, @Nullable Problem problem, @Nullable UUID supersedes) {
        UUID id = new UUID(5, entries.size());
        OffsetDateTime at = day.atTime(9, entries.size()).atOffset(ZoneOffset.UTC);
        entries.add(new Entry(
                id, new UUID(3, 3), EntryStep.LOOK, day, at, null, null, null, false, problem, "", supersedes, by, ""));
        return id;
    }

    private void answered(UUID entry, ProblemAnswer.Word word) {
        OffsetDateTime at = DAY.atTime(18, 0).atOffset(ZoneOffset.UTC);
        answers.computeIfAbsent(entry, each -> new ArrayList<>()).add(new ProblemAnswer(entry, word, TOM, "Tom", at));
    }

    private static Sowing sowing(SowingStage stage) {
        return new Sowing(
                new UUID(3, 3),
                new Sowing.Grower(TOM, "Tom", "US", "55804"),
                2027,
                SeasonPart.SPRING,
                Crops.PEPPER,
                new UUID(2, 2),
                "Lantern Row",
                false,
                8,
                Method.CELLS,
                true,
                Container.HALF_TRAY,
                12,
                1,
                12,
                0.1,
                null,
                stage,
                "",
                1,
                null);
    }
}
