package warmshelf.plan.engine;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.plan.engine.search.Planner;

/** {@code plan FILE}: puts as many requests on as few mats as it can, fairly, and says how good that is. */
@Command(
        name = "plan",
        description = "Plans a season: who lies where and when, how warm each mat is, who is refused and why.",
        footerHeading = "%n",
        footer = {
            "Prints placed, setPoints, refused (each with reason and change), placedAtMost (proven: no plan"
                    + " places more), optimal (proven: no plan is fairer or places more), shiftDays, seconds, words,"
                    + " choices and cutShort. The same file, seconds and starting number give the same plan unless"
                    + " cutShort says that the clock ended the search.",
            "The file and the rules: db/reference/plan-file.md."
        },
        mixinStandardHelpOptions = true)
public final class PlanCommand implements Callable<Integer> {
    private static final int MOST_SECONDS = 3_600;

    @Parameters(index = "0", paramLabel = "FILE", description = "JSON with days, circuits, mats, fixed and requests.")
    private Path file = Path.of("");

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "How long it may search, 1 to 3,600; usually ${DEFAULT-VALUE}.")
    private String seconds = "20";

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "The same file, seconds and starting number give the same plan; usually ${DEFAULT-VALUE}.")
    private String startingNumber = "1";

    @Option(
            names = "--baseline",
            paramLabel = "WAY",
            description = "Plan in a plain way instead, to compare with: first-come or greedy.")
    private @Nullable String baseline;

    @Override
    public Integer call() {
        int within = Given.whole("--seconds", seconds, 1, MOST_SECONDS);
        int from = Given.whole("--seed", startingNumber, Integer.MIN_VALUE, Integer.MAX_VALUE);
        Planner.Manner manner = manner();
        PlanQuestion question = PlanFile.read(file);
        Output.json(PlanAnswer.of(question, Planner.plan(question, manner, within, from, progress -> {}, () -> false)));
        return 0;
    }

    private Planner.Manner manner() {
        if (baseline == null) {
            return Planner.Manner.SEARCH;
        }
        return switch (baseline) {
            case "first-come" -> Planner.Manner.FIRST_COME;
            case "greedy" -> Planner.Manner.GREEDY;
            default ->
                throw new BadInput(
                        "--baseline was '%s'; first-come or greedy is accepted.".formatted(Given.shown(baseline)));
        };
    }
}
