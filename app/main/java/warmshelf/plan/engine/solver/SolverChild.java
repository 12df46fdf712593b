package warmshelf.plan.engine.solver;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/**
 * The process that runs the solver (CP-SAT of Google's OR-Tools). It reads questions one after another, each a line with
 * seconds by the clock, units of the solver's own deterministic time and a starting number, and then an {@link IntegerProgram}. It prints
 * {@code bound B} and {@code plan V0 V1 ...}, and {@code done} after each. It is apart because the solver's native library has
 * been seen to end the whole Java process; whatever happens here, the parent goes on.
 */
public final class SolverChild {
    /** Taken in turns, so that the outcome is the same on a machine with fewer cores. */
    private static final int WORKERS = 2;

    private SolverChild() {}

    public static void main(String[] none) throws IOException {
        Loader.loadNativeLibraries();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] limits = line.split(" ", -1);
                solve(
                        IntegerProgram.read(in),
                        Double.parseDouble(limits[0]),
                        Double.parseDouble(limits[1]),
                        Integer.parseInt(limits[2]));
                print("done");
            }
        }
    }

    private static void solve(IntegerProgram program, double seconds, double work, int startingNumber) {
        SolverModel model = new SolverModel(program);
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setMaxDeterministicTime(work)
                .setRandomSeed(startingNumber)
                .setNumWorkers(WORKERS)
                .setInterleaveSearch(true)
                .setLinearizationLevel(2)
                .setMaxPresolveIterations(1)
                .setCpModelProbingLevel(0);
        CpSolverStatus status = solver.solve(model.model(), new Printer(model));
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            print("bound " + solver.bestObjectiveBound());
        }
    }

    private static void print(String line) {
        System.out.println(line);
        System.out.flush();
    }

    /** Prints each better plan. The bound is read here too: the solver's own bound callback has crashed the process. */
    private static final class Printer extends CpSolverSolutionCallback {
        private final SolverModel model;

        Printer(SolverModel model) {
            this.model = model;
        }

        @Override
        public void onSolutionCallback() {
            StringBuilder line = new StringBuilder("plan");
            model.numbers().forEach(number -> line.append(' ').append(value(number)));
            print(line.toString());
            print("bound " + bestObjectiveBound());
        }
    }
}
