package warmshelf.frost;

import static warmshelf.frost.FrostAnswer.tenths;
import static warmshelf.frost.FrostAnswer.thousandths;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.station.MonthlyFrost;
import warmshelf.frost.station.StationEstimate;

/** The frost command's answers for a place, by what they rest on: the surface, stations or monthly means. */
final class FrostAnswers {
    private FrostAnswers() {}

    static FrostAnswer ofSurface(FrostClimate climate, int year) {
        FrostEvidence evidence = climate.evidence();
        FrostEvidence.Surface surface = Objects.requireNonNull(evidence.surface(), "the surface was asked");
        FrostSeason spring = climate.spring();
        FrostSeason autumn = climate.autumn();
        return new FrostAnswer(
                "surface",
                climate.place(),
                climate.latitude(),
                climate.longitude(),
                climate.elevationM(),
                null,
                season(spring, spring::dayExceededWith, height(spring), year),
                season(autumn, autumn::dayReachedWith, height(autumn), year),
                List.of(),
                new FrostAnswer.Surface(
                        surface.cells().stream().map(SurfacePoint.Cell::words).toList(),
                        tenths(surface.referenceElevationM()),
                        tenths(evidence.elevationSdM()),
                        tenths(surface.nearestStationKm()),
                        thousandths(surface.freezeRareShare())),
                words(Stream.concat(evidence.notes().stream(), Stream.of(new FrostNote.FrostPocket()))
                        .toList()));
    }

    /**
     * From a file of stations with published dates.
     *
     * @param file its name
     */
    static FrostAnswer ofStations(PostcodePlace place, StationEstimate estimate, String file, int year) {
        FrostSeason spring = estimate.spring();
        FrostSeason autumn = estimate.autumn();
        return new FrostAnswer(
                "stations",
                place.name(),
                place.latitude(),
                place.longitude(),
                place.elevationM(),
                null,
                season(spring, spring::dayExceededWith, null, year),
                season(autumn, autumn::dayReachedWith, null, year),
                estimate.stations().stream()
                        .map(part -> new FrostAnswer.Station(
                                part.name(),
                                tenths(part.distanceKm()),
                                part.elevationM(),
                                thousandths(part.weight()),
                                tenths(part.adjustmentDays()),
                                file))
                        .toList(),
                null,
                words(List.of(
                        new FrostNote.StationsMoved(),
                        new FrostNote.YearsWithFrostOnly(),
                        new FrostNote.FrostPocket())));
    }

    /** From twelve monthly mean minima in degrees Celsius, January first. */
    static FrostAnswer ofMonths(double latitude, double longitude, double elevationM, double[] means, int year) {
        MonthlyFrost frost = MonthlyFrost.of(means, latitude < 0);
        return new FrostAnswer(
                "monthly-minima",
                String.format(Locale.ROOT, "%.3f, %.3f", latitude, longitude),
                latitude,
                longitude,
                elevationM,
                null,
                FrostAnswer.Season.estimated(
                        frost.anySpringFrost(),
                        FrostAnswer.Dates.of(frost::lastSpringFrost, year),
                        frost.springSd(),
                        null,
                        null),
                FrostAnswer.Season.estimated(
                        frost.anyAutumnFrost(),
                        FrostAnswer.Dates.of(frost::firstAutumnFrost, year),
                        frost.autumnSd(),
                        null,
                        null),
                List.of(),
                null,
                monthlyNotes(latitude, longitude));
    }

    private static List<String> monthlyNotes(double latitude, double longitude) {
        List<FrostNote> notes = new ArrayList<>();
        notes.add(new FrostNote.MonthsAlone(MeasuredError.inUnitedStates(latitude, longitude)));
        notes.add(new FrostNote.MeansDecide());
        if (latitude < 0) {
            notes.add(new FrostNote.AutumnInNextYear());
        }
        return words(notes);
    }

    private static List<String> words(List<? extends FrostNote> notes) {
        return notes.stream().map(FrostNote::words).toList();
    }

    private static FrostAnswer.Season season(
            FrostSeason season, DoubleFunction<OptionalDouble> dayAt, FrostAnswer.@Nullable Height height, int year) {
        return FrostAnswer.Season.estimated(
                season.anyFrost(),
                FrostAnswer.Dates.of(dayAt, year),
                OptionalDouble.of(season.sdDays()),
                new FrostAnswer.Doubt(
                        tenths(season.yearSdDays()),
                        tenths(season.stationScatterDays()),
                        tenths(season.elevationSdDays())),
                height);
    }

    private static FrostAnswer.Height height(FrostSeason season) {
        return new FrostAnswer.Height(tenths(season.adjustmentDays()), tenths(season.daysPer100M()));
    }
}
