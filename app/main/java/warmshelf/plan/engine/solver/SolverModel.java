package warmshelf.plan.engine.solver;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;

/** An {@link IntegerProgram} in the solver's own terms. */
final class SolverModel {
    private final CpModel model = new CpModel();
    private final List<IntVar> numbers = new ArrayList<>();
    private final List<IntervalVar> intervals = new ArrayList<>();

    SolverModel(IntegerProgram program) {
        program.numbers().forEach(this::addNumber);
        aim(program);
        program.rows().forEach(this::addRow);
        program.stretches().forEach(this::addStretch);
        program.rooms().forEach(this::addRoom);
    }

    CpModel model() {
        return model;
    }

    List<IntVar> numbers() {
        return numbers;
    }

    private void addNumber(IntegerProgram.Quantity number) {
        if (number.most() == 1) {
            BoolVar variable = model.newBoolVar("");
            model.addHint(variable, number.hint() == 1);
            numbers.add(variable);
        } else {
            IntVar variable = model.newIntVar(0, number.most(), "");
            model.addHint(variable, number.hint());
            numbers.add(variable);
        }
    }

    private void aim(IntegerProgram program) {
        List<IntVar> wanted = new ArrayList<>();
        List<Long> weights = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            long weight = program.numbers().get(i).weight();
            if (weight != 0) {
                wanted.add(numbers.get(i));
                weights.add(weight);
            }
        }
        model.maximize(LinearExpr.weightedSum(
                wanted.toArray(new IntVar[0]),
                weights.stream().mapToLong(weight -> weight).toArray()));
    }

    private void addRow(IntegerProgram.Row row) {
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

    private void addStretch(IntegerProgram.Stretch stretch) {
        IntVar first = numbers.get(stretch.first());
        Literal present = (Literal) numbers.get(stretch.present());
        intervals.add(model.newOptionalFixedSizeIntervalVar(first, stretch.days(), present, ""));
        long[] firsts = new long[stretch.firsts().length];
        for (int i = 0; i < firsts.length; i++) {
            firsts[i] = stretch.firsts()[i];
        }
        model.addLinearExpressionInDomain(first, Domain.fromValues(firsts)).onlyEnforceIf(present);
    }

    private void addRoom(IntegerProgram.Room room) {
        CumulativeConstraint together = model.addCumulative(room.capacity());
        for (int i = 0; i < room.stretches().length; i++) {
            together.addDemand(intervals.get(room.stretches()[i]), room.sizes()[i]);
        }
    }
}
