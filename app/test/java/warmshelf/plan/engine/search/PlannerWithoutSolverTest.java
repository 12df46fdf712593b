package warmshelf.plan.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import warmshelf.plan.engine.PlanChecker;
import warmshelf.plan.engine.PlanInstances;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.search.Planner.Manner;
import warmshelf.plan.engine.solver.SolverChild;
import warmshelf.plan.engine.solver.SolverProcess;

/** What the planner gives when the solver fails it. */
@Timeout(300)
class PlannerWithoutSolverTest {
    private static final PlanQuestion QUESTION = PlanInstances.alike(PlanInstances.crowded(60, 1.3, 1));

    @Test
    void a_solver_that_dies_in_the_middle_costs_nothing_of_what_the_search_found() {
        RatedPlan outcome = plan(DiesWhileItSpeaks.class.getName());

        assertThat(PlanChecker.problems(QUESTION, outcome.plan())).isEmpty();
        assertThat(outcome.placed()).isBetween(outcome.placedBySearch(), outcome.placedAtMost());
        assertThat(outcome.placedBySearch()).isGreaterThan(45);
        assertThat(outcome.placedAtMost()).isLessThan(60);
    }

    @Test
    void without_a_solver_the_search_alone_gives_a_plan_and_a_bound() {
        RatedPlan outcome = plan("warmshelf.NoSuchClass");

        assertThat(PlanChecker.problems(QUESTION, outcome.plan())).isEmpty();
        assertThat(outcome.placed()).isBetween(outcome.placedBySearch(), outcome.placedAtMost());
        assertThat(outcome.placedBySearch()).isGreaterThan(45);
    }

    private static RatedPlan plan(String child) {
        Effort effort = new Effort(5, 250);
        return Planner.plan(
                QUESTION,
                Manner.SEARCH,
                effort,
                1,
                progress -> {},
                () -> false,
                () -> SolverProcess.start(List.of(child)));
    }

    /** The real solver, which ends as a broken native library would make it, in the middle of its second plan. */
    static final class DiesWhileItSpeaks {
        private DiesWhileItSpeaks() {}

        public static void main(String[] none) throws IOException {
            PrintStream out = System.out;
            System.setOut(new PrintStream(
                    new FilterOutputStream(out) {
                        private int lines;

                        @Override
                        public void write(int letter) throws IOException {
                            super.write(letter);
                            lines += letter == '\n' ? 1 : 0;
                            if (lines == 2 && letter == ' ') {
                                out.flush();
                                Runtime.getRuntime().halt(134);
                            }
                        }
                    },
                    true,
                    StandardCharsets.UTF_8));
            SolverChild.main(none);
        }
    }
}
