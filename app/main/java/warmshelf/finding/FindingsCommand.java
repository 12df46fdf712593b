package warmshelf.finding;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.finding.season.SeasonAnswer;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.ConfidenceInterval;
import warmshelf.finding.statistics.GerminationCurve;
import warmshelf.finding.statistics.GerminationSpeed;
import warmshelf.finding.statistics.TestOutcome;

/**
 * {@code findings FILE}: ways to sprout seed compared, from a table with one row a seed; {@code findings --data FOLDER --season YEAR}: a
 * group's season.
 */
@Command(
        name = "findings",
        description = {
            "Compares ways to sprout seed, from a table with one row a seed.",
            "With --data: a season of a group looked back on. Stop the server first."
        },
        synopsisHeading = "Usage: ",
        customSynopsis = {
            "warmshelf findings FILE [--exact-times]",
            "       warmshelf findings --data FOLDER --season YEAR"
        },
        footerHeading = "%n",
        footer = {
            "The table's first line is arm,unit,last_without,first_with,status: the way, a name of the seed or its tray, the"
                    + " last look without and the first with a sprout in days since sowing, and sprouted or not.",
            "Prints arms (each with seeds, sprouted, share, medianDays of all seeds, t50 of those that sprouted,"
                    + " meanGerminationTime by day of counting, spreadDays and curve), logRank (chiSquare, df, p; between looks its"
                    + " permutation form, with permutationP for two ways of few seeds), shareDifference and daysLater (the first way"
                    + " less the second, each with value, low and high) and words.",
            "A season prints season, totals, crops (each with method, seeds, share and halfDays), weeks, looks, losses and words,"
                    + " as its page shows them."
        },
        mixinStandardHelpOptions = true)
public final class FindingsCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "The table, comma-separated, in UTF-8.")
    private @Nullable Path file;

    @Option(names = "--exact-times", description = "first_with is the time itself, not a look.")
    private boolean exactTimes;

    @Option(names = "--data", paramLabel = "FOLDER", description = "A group's data folder, instead of FILE.")
    private @Nullable Path data;

    @Option(names = "--season", paramLabel = "YEAR", description = "The season, with --data: the year of planting out.")
    private @Nullable String season;

    @Override
    public Integer call() {
        if (data != null && file == null && season != null && !exactTimes) {
            Output.json(SeasonAnswer.of(data, Given.whole("--season", season, 2000, 2099), Clock.systemUTC()));
        } else if (file != null && data == null && season == null) {
            compare(file);
        } else {
            throw new BadInput("Either FILE, perhaps with --exact-times, or --data with --season is accepted.");
        }
        return 0;
    }

    private void compare(Path table) {
        List<Arm> arms = SeedFile.read(table, exactTimes);
        Output.json(answer(
                arms, exactTimes ? WaysCompared.ofExactTimes(arms) : WaysCompared.ofLooks(List.of(arms), Set.of())));
    }

    private Map<String, @Nullable Object> answer(List<Arm> arms, WaysCompared comparison) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put(
                "arms",
                arms.stream().map(arm -> answer(arm, found(arm, comparison))).toList());
        answer.put(
                "logRank",
                comparison
                        .logRank()
                        .map(outcome -> answer(outcome, comparison.dealtOut()))
                        .orElse(null));
        answer.put(
                "shareDifference",
                comparison
                        .shares()
                        .map(shares -> answer(
                                comparison.ways().get(0).sprouted().value()
                                        - comparison.ways().get(1).sprouted().value(),
                                shares))
                        .orElse(null));
        answer.put(
                "daysLater",
                comparison
                        .speeds()
                        .map(speeds -> answer(speeds.days(), speeds.interval()))
                        .orElse(null));
        List<String> words = new ArrayList<>(WaysWords.of(comparison));
        WaysWords.oneName(comparison).ifPresent(words::add);
        answer.put("words", String.join(" ", words));
        return answer;
    }

    private static WayFound found(Arm arm, WaysCompared comparison) {
        return comparison.ways().stream()
                .filter(way -> way.name().equals(arm.name()))
                .findFirst()
                .orElseThrow();
    }

    private Map<String, @Nullable Object> answer(Arm arm, WayFound way) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("arm", arm.name());
        answer.put("seeds", way.sprouted().of());
        answer.put("sprouted", way.sprouted().came());
        answer.put("share", share(way));
        answer.put("medianDays", orNull(way.curve().median()));
        answer.put("t50", orNull(exactTimes ? GerminationSpeed.of(arm.times()).t50() : way.half()));
        answer.put("meanGerminationTime", orNull(way.meanTime()));
        answer.put("spreadDays", orNull(way.spread()));
        answer.put(
                "curve",
                way.curve().points().stream().map(FindingsCommand::point).toList());
        return answer;
    }

    private static Map<String, Double> share(WayFound way) {
        Map<String, Double> share = new LinkedHashMap<>();
        share.put("value", way.sprouted().value());
        share.put("exactLow", way.sprouted().exact().low());
        share.put("exactHigh", way.sprouted().exact().high());
        share.put("wilsonLow", way.sprouted().wilson().low());
        share.put("wilsonHigh", way.sprouted().wilson().high());
        return share;
    }

    private static List<Double> point(GerminationCurve.Point point) {
        return List.of(point.day(), point.share());
    }

    private static Map<String, Object> answer(TestOutcome outcome, OptionalDouble exact) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("chiSquare", outcome.chiSquare());
        answer.put("df", outcome.df());
        answer.put("p", outcome.p());
        exact.ifPresent(chance -> answer.put("permutationP", chance));
        return answer;
    }

    private static Map<String, Double> answer(double value, ConfidenceInterval interval) {
        Map<String, Double> answer = new LinkedHashMap<>();
        answer.put("value", value);
        answer.put("low", interval.low());
        answer.put("high", interval.high());
        return answer;
    }

    private static @Nullable Double orNull(OptionalDouble figure) {
        return figure.isPresent() ? figure.getAsDouble() : null;
    }
}
