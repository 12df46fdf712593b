package warmshelf.frost;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.station.StationEstimate;

/** The frost command's answer from a file of stations with published dates, field by field as documented. */
record StationsAnswer(
        String evidence,
        String place,
        double latitude,
        double longitude,
        double elevationM,
        Season spring,
        Season autumn,
        List<Station> stations,
        List<String> notes) {

    /** Published dates hold for the years with a frost; how many have none is not told. */
    record Season(
            @Nullable Integer seasons,
            @Nullable Integer seasonsWithFrost,
            double anyFrost,
            @Nullable LocalDate p50,
            @Nullable LocalDate p30,
            @Nullable LocalDate p10,
            @Nullable LocalDate p90,
            double sdDays,
            @Nullable String latest,
            @Nullable String earliest,
            double yearSdDays,
            double stationScatterDays,
            double elevationSdDays) {}

    record Station(
            String name, double distanceKm, double elevationM, double weight, double adjustmentDays, String source) {}

    static StationsAnswer of(PostcodePlace place, StationEstimate estimate, String file, int year) {
        FrostSeason spring = estimate.spring();
        FrostSeason autumn = estimate.autumn();
        return new StationsAnswer(
                "stations",
                place.name(),
                place.latitude(),
                place.longitude(),
                place.elevationM(),
                season(spring, spring::dayExceededWith, year),
                season(autumn, autumn::dayReachedWith, year),
                estimate.stations().stream()
                        .map(part -> new Station(
                                part.name(),
                                tenths(part.distanceKm()),
                                part.elevationM(),
                                Math.round(1000 * part.weight()) / 1000.0,
                                tenths(part.adjustmentDays()),
                                file))
                        .toList(),
                List.of(
                        "The stations' dates are moved to the place by Hopkins' rule and by what the stations around teach, and"
                                + " weighted by distance and height; those that count most are listed.",
                        "Published dates hold for the years that have a frost; how many have none the file does not tell.",
                        FrostNotes.FROST_POCKET));
    }

    private static Season season(FrostSeason season, DoubleFunction<OptionalDouble> dayAt, int year) {
        return new Season(
                null,
                null,
                season.anyFrost(),
                date(dayAt.apply(0.5), year),
                date(dayAt.apply(0.3), year),
                date(dayAt.apply(0.1), year),
                date(dayAt.apply(0.9), year),
                tenths(season.sdDays()),
                null,
                null,
                tenths(season.yearSdDays()),
                tenths(season.stationScatterDays()),
                tenths(season.elevationSdDays()));
    }

    private static @Nullable LocalDate date(OptionalDouble day, int year) {
        return day.isPresent() ? YearDay.in(year, day.getAsDouble()) : null;
    }

    private static double tenths(double value) {
        return Math.round(10 * value) / 10.0;
    }
}
