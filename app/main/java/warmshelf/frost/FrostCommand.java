package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
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
import warmshelf.frost.station.StationEstimate;
import warmshelf.frost.station.StationFile;
import warmshelf.frost.station.StationSet;

/**
 * {@code frost}: frost dates with what they rest on, for a postcode or a point; from the bundled surface, from stations with
 * published dates, from a station's daily minima or from twelve monthly means.
 */
@Command(
        name = "frost",
        description = "Last spring and first autumn frost of a place, with what the dates rest on.",
        footerHeading = "%n",
        footer = {
            "Prints evidence, place, latitude, longitude, elevationM, spring and autumn, stations, surface"
                    + " and notes; from daily minima also what the station's record is worth.",
            "spring and autumn have seasons, seasonsWithFrost, anyFrost, p50, p30, p10, p90, sdDays,"
                    + " latest, earliest and what the doubt is made of. spring.p10: one spring in ten still has a"
                    + " frost after this day. autumn.p10: one autumn in ten already had one before it. What cannot be"
                    + " given is null.",
            "Without a postcode name a point by --at, which may lie anywhere in the world with --stations,"
                    + " --monthly or --minima."
        },
        mixinStandardHelpOptions = true)
public final class FrostCommand implements Callable<Integer> {
    private static final int EARLIEST_SEASON = 1900;
    private static final int LATEST_SEASON = 2200;

    private final Clock clock;

    @Parameters(index = "0", arity = "0..1", paramLabel = "POSTCODE", description = "A postcode, such as 55811.")
    private @Nullable String postcode;

    @Option(
            names = "--country",
            paramLabel = "C",
            defaultValue = Postcodes.UNITED_STATES,
            description = "The postcode's country; usually ${DEFAULT-VALUE}.")
    private String country = Postcodes.UNITED_STATES;

    @Option(names = "--at", paramLabel = "LAT,LON,ELEVATION_M", description = "A point instead of a postcode.")
    private @Nullable String point;

    @Option(names = "--minima", paramLabel = "FILE", description = "A station's daily minima instead of a place.")
    private @Nullable Path minima;

    @Option(
            names = "--format",
            paramLabel = "LAYOUT",
            description = "Layout of that file: auto, plain, ghcn-csv or ghcn-dly; usually told by its first line.")
    private @Nullable String format;

    @Option(names = "--threshold", paramLabel = "CELSIUS", description = "Frost is a minimum of so much or less (0).")
    private @Nullable String threshold;

    @Option(
            names = "--latitude",
            paramLabel = "LAT",
            description = "Where the station lies; below 0 is the southern half.")
    private @Nullable String latitude;

    @Option(
            names = "--monthly",
            paramLabel = "T1,...,T12",
            description = "Mean daily minimum of January to December in Celsius, with --at.")
    private @Nullable String monthly;

    @Option(
            names = "--stations",
            paramLabel = "FILE",
            description = "Stations with published dates, instead of the bundled surface.")
    private @Nullable Path stations;

    @Option(names = "--season", paramLabel = "YEAR", description = "Year of planting out; usually the next spring's.")
    private @Nullable Integer season;

    public FrostCommand() {
        this(Clock.system(ZoneId.systemDefault()));
    }

    FrostCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Output.json(answer(season()));
        return 0;
    }

    private FrostAnswer answer(int year) {
        if (minima != null) {
            return ofMinima(minima, year);
        }
        if (format != null || threshold != null || latitude != null) {
            throw new BadInput(SAY.formatWithoutMinima());
        }
        if (monthly != null) {
            return ofMonths(monthly, year);
        }
        return stations == null ? FrostAnswers.ofSurface(climate(), year) : ofStations(stations, year);
    }

    private FrostAnswer ofMonths(String means, int year) {
        if (postcode != null || stations != null || point == null) {
            throw new BadInput(SAY.monthlyGoesWithAt());
        }
        TypedPoint at = TypedPoint.of(point);
        return FrostAnswers.ofMonths(at.latitude(), at.longitude(), at.elevationM(), TypedMonths.of(means), year);
    }

    private FrostAnswer ofStations(Path file, int year) {
        PostcodePlace place = point == null || postcode != null
                ? postcodePlace()
                : TypedPoint.of(point).place();
        StationSet read = new StationSet(StationFile.read(file));
        StationEstimate estimate = estimate(read, place, 0);
        if (point == null) {
            double difference = place.elevationM() - estimate.stations().get(0).elevationM();
            estimate = estimate(read, place, FrostClimates.elevationSd(difference));
        }
        return FrostAnswers.ofStations(place, estimate, String.valueOf(file.getFileName()), year);
    }

    private static StationEstimate estimate(StationSet stations, PostcodePlace place, double elevationSdM) {
        return StationEstimate.at(stations, place.latitude(), place.longitude(), place.elevationM(), elevationSdM)
                .orElseThrow(() -> new BadInput(SAY.noStation()));
    }

    private FrostAnswer ofMinima(Path file, int year) {
        if (postcode != null || point != null || monthly != null || stations != null) {
            throw new BadInput(SAY.minimaAlone());
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
        return MinimaLayout.named(name).orElseThrow(() -> new BadInput(SAY.unknownFormat(Given.shown(name))));
    }

    private FrostClimate climate() {
        if (point != null && postcode == null) {
            TypedPoint at = TypedPoint.of(point);
            return FrostClimates.at(at.latitude(), at.longitude(), at.elevationM());
        }
        return FrostClimates.at(postcodePlace());
    }

    private PostcodePlace postcodePlace() {
        if (point != null && postcode != null) {
            throw new BadInput(SAY.postcodeAndPoint());
        }
        if (postcode == null) {
            throw new BadInput(SAY.noPlace());
        }
        String code = postcode;
        return Postcodes.bundled()
                .find(country, code)
                .orElseThrow(() -> new BadInput(UnknownPostcode.sentence(country, code)));
    }

    private int season() {
        int year = season == null ? PlannedSeason.after(LocalDate.now(clock)) : season;
        if (year < EARLIEST_SEASON || year > LATEST_SEASON) {
            throw new BadInput(SAY.seasonOutside(year, EARLIEST_SEASON, LATEST_SEASON));
        }
        return year;
    }
}
