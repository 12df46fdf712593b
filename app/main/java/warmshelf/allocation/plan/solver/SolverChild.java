package warmshelf.allocation.plan.solver;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The process that runs the solver (CP-SAT of Google's OR-Tools). It reads an {@link IntegerProgram} and prints lines:
 * {@code bound B} and {@code plan V0 V1 ...}. It is apart because the solver's native library has been seen to end the whole
 * Java process; whatever happens here, the parent goes on.
 */
public final class SolverChild {
    private SolverChild() {}

    /** Arguments: seconds by the clock, units of the solver's own deterministic time, seed. */
    public static void main(String[] arguments) throws IOException {
        IntegerProgram program;
        try (BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            program = IntegerProgram.read(in);
        }
        Loader.loadNativeLibraries();
        CpModel model = new CpModel();
        List<IntVar> numbers = numbers(program, model);
        program.rows().forEach(row -> add(row, numbers, model));
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(Double.parseDouble(arguments[0]))
                .setMaxDeterministicTime(Double.parseDouble(arguments[1]))
                .setRandomSeed(Integer.parseInt(arguments[2]))
                .setNumWorkers(1)
                .setLinearizationLevel(2)
                .setSymmetryLevel(0)
                .setCpModelProbingLevel(0);
        CpSolverStatus status = solver.solve(model, new Printer(numbers));
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            print("bound " + solver.bestObjectiveBound());
        }
    }

    private static List<IntVar> numbers(IntegerProgram program, CpModel model) {
        List<IntVar> numbers = new ArrayList<>();
        List<IntVar> wanted = new ArrayList<>();
        List<Long> weights = new ArrayList<>();
        for (IntegerProgram.Number number : program.numbers()) {
            IntVar variable = model.newIntVar(0, number.most(), "");
            model.addHint(variable, number.hint());
            numbers.add(variable);
            if (number.weight() != 0) {
                wanted.add(variable);
                weights.add((long) number.weight());
            }
        }
        model.maximize(LinearExpr.weightedSum(
                wanted.toArray(new IntVar[0]),
                weights.stream().mapToLong(weight -> weight).toArray()));
        return numbers;
    }

    private static void add(IntegerProgram.Row row, List<IntVar> numbers, CpModel model) {
        IntVar[] variables = new IntVar[row.numbers().length];
        long[] factors = new long[variables.length];
        for (int i = 0; i < variables.length; i++) {
            variables[i] = numbers.get(row.numbers()[i]);
            factors[i] = row.factors()[i];
        }
        LinearExpr sum = LinearExpr.weightedSum(variables, factors);
        if (row.equal()) {
            model.addEquality(sum, row.limit());
        } else {
            model.addLessOrEqual(sum, row.limit());
        }
    }

    private static void print(String line) {
        System.out.println(line);
        System.out.flush();
    }

    /** Prints each better plan. The bound is read here too: the solver's own bound callback has crashed the process. */
    private static final class Printer extends CpSolverSolutionCallback {
        private final List<IntVar> numbers;

        Printer(List<IntVar> numbers) {
            this.numbers = numbers;
        }

        @Override
        public void onSolutionCallback() {
            StringBuilder line = new StringBuilder("plan");
            numbers.forEach(number -> line.append(' ').append(value(number)));
            print(line.toString());
            print("bound " + bestObjectiveBound());
        }
    }
}
