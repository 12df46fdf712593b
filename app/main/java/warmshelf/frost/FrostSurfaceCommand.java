package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.frost.station.StationFile;
import warmshelf.frost.station.StationFrost;
import warmshelf.frost.station.SurfaceRun;

/** {@code frost-surface}: fits the grid of frost dates that the program bundles from a file of stations. */
@Command(
        name = "frost-surface",
        description = "Fits a grid of frost dates from stations with published dates.",
        footerHeading = "%n",
        footer = {
            "Fits such a grid as comes with the program. Prints stations, cells and heldOut: what the grid"
                    + " is worth at stations kept out of the fit."
        },
        mixinStandardHelpOptions = true)
public final class FrostSurfaceCommand implements Callable<Integer> {
    private static final double SMALLEST_CELL = 0.05;
    private static final double LARGEST_CELL = 5;

    @Option(names = "--stations", required = true, paramLabel = "FILE", description = "CSV of stations.")
    private @Nullable Path stations;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "Where the grid is written, as CSV.")
    private @Nullable Path out;

    @Option(
            names = "--cell",
            paramLabel = "DEGREES",
            description = "Width of a cell in degrees; usually ${DEFAULT-VALUE}.")
    private String cell = "0.25";

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Draws the stations kept out for the check; usually ${DEFAULT-VALUE}.")
    private long seed = 1;

    /** What the grid is worth, for the spring date; autumn's beside it. */
    record HeldOut(
            int stations,
            double medianAbsErrorDays,
            double p90AbsErrorDays,
            double autumnMedianAbsErrorDays,
            double autumnP90AbsErrorDays) {}

    /** The command's answer. */
    record Answer(int stations, int cells, HeldOut heldOut) {}

    @Override
    public Integer call() throws IOException {
        Path from = FrostCheckCommand.given(stations);
        Path to = FrostCheckCommand.given(out);
        double width = Given.decimal("--cell", cell, SMALLEST_CELL, LARGEST_CELL);
        List<StationFrost> read = FrostCheckCommand.enough(from, StationFile.read(from));
        if (to.toAbsolutePath().getParent() == null
                || !Files.isDirectory(to.toAbsolutePath().getParent())) {
            throw new BadInput(SAY.noFolderForOut(to.toString()));
        }
        SurfaceRun run = SurfaceRun.of(read, width, seed);
        Files.write(to, run.rows());
        Output.json(new Answer(
                read.size(),
                run.cells(),
                new HeldOut(
                        run.heldOut(),
                        FrostCheckCommand.hundredths(run.spring().median()),
                        FrostCheckCommand.hundredths(run.spring().nineTenths()),
                        FrostCheckCommand.hundredths(run.autumn().median()),
                        FrostCheckCommand.hundredths(run.autumn().nineTenths()))));
        return 0;
    }
}
