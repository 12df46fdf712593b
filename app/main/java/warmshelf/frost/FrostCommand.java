package warmshelf.frost;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.MinimaFile;
import warmshelf.frost.minima.MinimaLayout;
import warmshelf.frost.minima.RecordNotes;
import warmshelf.frost.minima.StationMinima;

/** {@code frost POSTCODE} or {@code frost --at LAT,LON,ELEVATION_M}: frost dates with what they rest on. */
@Command(
        name = "frost",
        description = "Last spring and first autumn frost of a place, with what the dates rest on.",
        mixinStandardHelpOptions = true)
public final class FrostCommand implements Callable<Integer> {
    private static final int EARLIEST_SEASON = 1900;
    private static final int LATEST_SEASON = 2200;

    private final Clock clock;

    @Parameters(index = "0", arity = "0..1", paramLabel = "POSTCODE", description = "A postcode, such as 55811.")
    private @Nullable String postcode;

    @Option(names = "--country", defaultValue = "US", description = "The postcode's country (default: US).")
    private String country = Postcodes.UNITED_STATES;

    @Option(names = "--at", paramLabel = "LAT,LON,ELEVATION_M", description = "A point instead of a postcode.")
    private @Nullable String point;

    @Option(names = "--minima", paramLabel = "FILE", description = "A station's daily minima instead of a place.")
    private @Nullable Path minima;

    @Option(
            names = "--format",
            paramLabel = "auto|plain|ghcn-csv|ghcn-dly",
            description = "Layout of that file (default: told by its first line).")
    private @Nullable String format;

    @Option(names = "--threshold", paramLabel = "CELSIUS", description = "Frost is a minimum of so much or less (0).")
    private @Nullable String threshold;

    @Option(names = "--latitude", description = "Where the station lies; below 0 is the southern half.")
    private @Nullable String latitude;

    @Option(names = "--season", description = "Year of planting out (default: the next spring's).")
    private @Nullable Integer season;

    public FrostCommand() {
        this(Clock.system(ZoneId.systemDefault()));
    }

    FrostCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        int year = season();
        if (minima != null) {
            Output.json(ofMinima(minima, year));
            return 0;
        }
        if (format != null || threshold != null || latitude != null) {
            throw new BadInput("--format, --threshold and --latitude go with --minima FILE, which was not given.");
        }
        Output.json(FrostAnswer.of(climate(), year));
        return 0;
    }

    private MinimaAnswer ofMinima(Path file, int year) {
        if (postcode != null || point != null) {
            throw new BadInput("Both --minima and a place were given; one of them is accepted.");
        }
        double celsius = threshold == null ? 0 : Given.decimal("--threshold", threshold, -40, 20);
        Double north = latitude == null ? null : (Double) Given.decimal("--latitude", latitude, -90, 90);
        StationMinima station = MinimaFile.read(file, layout());
        FrostRecord record = FrostRecord.of(station, north, celsius);
        boolean told = north != null || station.point() != null;
        return MinimaAnswer.of(station, record, north, RecordNotes.of(station, record, told), year);
    }

    private @Nullable MinimaLayout layout() {
        String name = format;
        if (name == null || name.equals("auto")) {
            return null;
        }
        return MinimaLayout.named(name)
                .orElseThrow(() -> new BadInput("--format was '%s'; auto, plain, ghcn-csv or ghcn-dly are accepted."
                        .formatted(Given.shown(name))));
    }

    private FrostClimate climate() {
        if (point != null && postcode != null) {
            throw new BadInput("Both a postcode and --at were given; one of them is accepted.");
        }
        if (point != null) {
            double[] numbers = numbers(point);
            return FrostClimates.at(numbers[0], numbers[1], numbers[2]);
        }
        if (postcode == null) {
            throw new BadInput("Neither a postcode nor --at LAT,LON,ELEVATION_M was given; one of them is needed.");
        }
        String code = postcode;
        Optional<PostcodePlace> place = Postcodes.bundled().find(country, code);
        return FrostClimates.at(place.orElseThrow(() -> new BadInput(UnknownPostcode.sentence(country, code))));
    }

    private int season() {
        int year = season == null ? SpringAhead.after(LocalDate.now(clock)) : season;
        if (year < EARLIEST_SEASON || year > LATEST_SEASON) {
            throw new BadInput("The season was %d; a year from %d to %d is accepted."
                    .formatted(year, EARLIEST_SEASON, LATEST_SEASON));
        }
        return year;
    }

    private static double[] numbers(String point) {
        List<Double> numbers = new ArrayList<>();
        for (String part : point.split(",", -1)) {
            try {
                numbers.add(Double.valueOf(part.strip()));
            } catch (NumberFormatException notANumber) {
                // counts as missing, so that the sentence below covers it
            }
        }
        if (numbers.size() != 3 || point.split(",", -1).length != 3) {
            throw new BadInput(
                    "--at was '%s'; latitude, longitude and elevation in metres are accepted, such as 46.8,-92.1,180."
                            .formatted(point));
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
