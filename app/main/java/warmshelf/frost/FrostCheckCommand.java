package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.Output;
import warmshelf.frost.station.ErrorSpread;
import warmshelf.frost.station.LeaveOneOut;
import warmshelf.frost.station.LeaveOneOut.Errors;
import warmshelf.frost.station.MonthlyCheck;
import warmshelf.frost.station.MonthlyFile;
import warmshelf.frost.station.StationFile;
import warmshelf.frost.station.StationFrost;

/** {@code frost-check}: how far off each way of telling frost dates is, station by station from all the others. */
@Command(
        name = "frost-check",
        description = "Leaves each station out and tells its frost dates from the others, in every way there is.",
        footerHeading = "%n",
        footer = {
            "Prints stations, medianAbsErrorDays, p90AbsErrorDays and worstAbsErrorDays (each with surface,"
                    + " stations, hopkins and nearestUnadjusted) of the last spring frost, autumn with the same three,"
                    + " and monthlyMinima: how far off each way is at stations left out."
        },
        mixinStandardHelpOptions = true)
public final class FrostCheckCommand implements Callable<Integer> {
    private static final int LEAST_STATIONS = 10;

    @Option(names = "--stations", required = true, paramLabel = "FILE", description = "CSV of stations.")
    private @Nullable Path stations;

    @Option(
            names = "--monthly-minima",
            paramLabel = "FILE",
            description = "CSV of the same stations' monthly mean minima.")
    private @Nullable Path monthlyMinima;

    /** One figure for each way. */
    record Ways(double surface, double stations, double hopkins, double nearestUnadjusted) {}

    /** Errors of the first autumn frost. */
    record Autumn(Ways medianAbsErrorDays, Ways p90AbsErrorDays, Ways worstAbsErrorDays) {}

    /** Errors of dates told from monthly minima. */
    record Monthly(
            int stations,
            double medianAbsErrorDays,
            double p90AbsErrorDays,
            double autumnMedianAbsErrorDays,
            double autumnP90AbsErrorDays) {}

    /** The command's answer; the first three tables are of the last spring frost. */
    record Answer(
            int stations,
            Ways medianAbsErrorDays,
            Ways p90AbsErrorDays,
            Ways worstAbsErrorDays,
            Autumn autumn,
            @Nullable Monthly monthlyMinima) {}

    @Override
    public Integer call() {
        Path from = given(stations);
        List<StationFrost> read = enough(from, StationFile.read(from));
        // read before the long count, so that a mistake in it is told at once
        List<MonthlyCheck.Pair> pairs = monthlyMinima == null ? List.of() : MonthlyFile.read(monthlyMinima, read);
        List<Errors> seasons = new LeaveOneOut(read).springAndAutumn();
        Errors spring = seasons.get(0);
        Errors autumn = seasons.get(1);
        Output.json(new Answer(
                spring.stations().stations(),
                ways(spring, ErrorSpread::median),
                ways(spring, ErrorSpread::nineTenths),
                ways(spring, ErrorSpread::worst),
                new Autumn(
                        ways(autumn, ErrorSpread::median),
                        ways(autumn, ErrorSpread::nineTenths),
                        ways(autumn, ErrorSpread::worst)),
                pairs.isEmpty() ? null : monthly(MonthlyCheck.of(pairs))));
        return 0;
    }

    private static Ways ways(Errors errors, ToDoubleFunction<ErrorSpread> figure) {
        return new Ways(
                hundredths(figure.applyAsDouble(errors.surface())),
                hundredths(figure.applyAsDouble(errors.stations())),
                hundredths(figure.applyAsDouble(errors.hopkins())),
                hundredths(figure.applyAsDouble(errors.nearest())));
    }

    private static Monthly monthly(MonthlyCheck check) {
        return new Monthly(
                check.spring().stations(),
                hundredths(check.spring().median()),
                hundredths(check.spring().nineTenths()),
                hundredths(check.autumn().median()),
                hundredths(check.autumn().nineTenths()));
    }

    /** An option that picocli requires. */
    static Path given(@Nullable Path option) {
        if (option == null) {
            throw new IllegalStateException("picocli has let a required option pass");
        }
        return option;
    }

    static List<StationFrost> enough(Path file, List<StationFrost> stations) {
        if (StationFrost.withDates(stations) < LEAST_STATIONS) {
            throw new BadInput(
                    SAY.tooFewStations(file.toString(), (int) StationFrost.withDates(stations), LEAST_STATIONS));
        }
        return stations;
    }

    static double hundredths(double value) {
        return Math.round(100 * value) / 100.0;
    }
}
