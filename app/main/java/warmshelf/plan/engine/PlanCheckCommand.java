package warmshelf.plan.engine;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import warmshelf.Output;
import warmshelf.words.Units;

/** {@code plan-check FILE PLAN}: whether a plan keeps every rule. */
@Command(
        name = "plan-check",
        description = "Checks a plan against what it is for, rule by rule, without the program that made it.",
        footerHeading = "%n",
        footer = {"Prints valid and problems; status 1 when the plan is not valid."},
        mixinStandardHelpOptions = true)
public final class PlanCheckCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "What was to be planned.")
    private Path file = Path.of("");

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan, as 'plan' prints it.")
    private Path plan = Path.of("");

    record Verdict(boolean valid, List<String> problems) {}

    @Override
    public Integer call() {
        List<String> problems = PlanChecker.problems(PlanFile.read(file), AnswerFile.read(plan)).stream()
                .map(problem -> problem.words(PlanNames.IN_FILE, Units.METRIC))
                .toList();
        Output.json(new Verdict(problems.isEmpty(), problems));
        return problems.isEmpty() ? 0 : 1;
    }
}
