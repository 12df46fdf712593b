package warmshelf.plan.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(120)
class SolverProcessTest {
    @Test
    void the_solver_finds_the_best_of_a_small_program_and_leaves_nothing_behind() throws Exception {
        IntegerProgram program = new IntegerProgram();
        IntegerProgram.Sum weight = new IntegerProgram.Sum();
        int[] weights = {5, 4, 3};
        for (int i = 0; i < 3; i++) {
            weight.add(program.number(1, i + 3, 0), weights[i]);
        }
        program.atMost(8, weight);
        Path folder;

        try (SolverProcess solver = SolverProcess.start()) {
            folder = solver.folder().orElseThrow();
            assertThat(folder).isDirectory();
            solver.ask(program, 60, 60, 1);
            assertThat(solver.await(() -> false)).isTrue();

            // worth 3, 4 and 5 at weights 5, 4 and 3: the last two weigh 7 and are worth 9
            assertThat(solver.plan()).hasValue(new int[] {0, 1, 1});
            assertThat(solver.bound()).hasValue(9);
        }
        assertThat(folder).doesNotExist();
    }

    @Test
    void a_child_that_dies_costs_only_what_it_had_not_said() throws Exception {
        try (SolverProcess solver = SolverProcess.start(List.of(DyingChild.class.getName()))) {
            solver.ask(new IntegerProgram(), 60, 60, 1);
            solver.await(() -> false);

            assertThat(solver.bound()).hasValue(12.5);
            assertThat(solver.plan()).hasValue(new int[] {1, 0});
        }
    }

    @Test
    void a_child_that_is_not_there_says_nothing() throws Exception {
        try (SolverProcess solver = SolverProcess.start(List.of("warmshelf.NoSuchClass"))) {
            solver.ask(new IntegerProgram(), 60, 60, 1);
            solver.await(() -> false);

            assertThat(solver.bound()).isEmpty();
            assertThat(solver.plan()).isEmpty();
        }
    }

    /** Says something, and dies as a broken native library would make it. */
    static final class DyingChild {
        private DyingChild() {}

        public static void main(String[] unused) throws IOException {
            // what is said before anything was asked is no answer
            System.in.read();
            System.out.println("bound 12.5");
            System.out.println("plan 1 0");
            System.out.println("bound twelve");
            System.out.flush();
            Runtime.getRuntime().halt(134);
        }
    }
}
