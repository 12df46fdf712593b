package warmshelf.frost;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.RecordNotes;
import warmshelf.frost.minima.StationMinima;
import warmshelf.frost.minima.StationPoint;
import warmshelf.frost.minima.Trend;

/** The frost command's answer from daily minima, field by field as documented. */
record MinimaAnswer(
        String evidence,
        String place,
        @Nullable Double latitude,
        @Nullable Double longitude,
        @Nullable Double elevationM,
        double thresholdC,
        Season spring,
        Season autumn,
        List<Object> stations,
        List<String> notes) {

    /** One side of the record; {@code method} says whether p50 to p90 are {@code counted} or {@code fitted}. */
    record Season(
            int seasons,
            int seasonsWithFrost,
            @Nullable Double anyFrost,
            @Nullable LocalDate p50,
            @Nullable LocalDate p30,
            @Nullable LocalDate p10,
            @Nullable LocalDate p90,
            @Nullable Double sdDays,
            @Nullable String latest,
            @Nullable String earliest,
            int leftOut,
            String method,
            Dates counted,
            Dates fitted,
            @Nullable Double p50WithinDays,
            @Nullable Double p10WithinDays,
            @Nullable Drift trend) {}

    record Dates(
            @Nullable LocalDate p50,
            @Nullable LocalDate p30,
            @Nullable LocalDate p10,
            @Nullable LocalDate p90) {}

    record Drift(
            int firstYear,
            int lastYear,
            double daysPerDecade,
            double chance,
            boolean clear,
            @Nullable LocalDate p10AtItsEnd,
            String words) {}

    static MinimaAnswer of(
            StationMinima station, FrostRecord record, @Nullable Double latitude, List<String> notes, int year) {
        StationPoint point = station.point();
        return new MinimaAnswer(
                "daily-minima",
                point == null ? station.station() : point.name(),
                point == null || latitude != null ? latitude : (Double) point.latitude(),
                point == null ? null : (Double) point.longitude(),
                point == null ? null : point.elevationM(),
                record.thresholdC(),
                season(record.spring(), year),
                season(record.autumn(), year),
                List.of(),
                notes);
    }

    private static Season season(FrostSide side, int year) {
        Function<OptionalDouble, @Nullable LocalDate> dated = day -> date(day, year);
        return new Season(
                side.seasons().size(),
                side.withFrost(),
                rounded(side.anyFrost(), 1000),
                dated.apply(side.dayAt(0.5)),
                dated.apply(side.dayAt(0.3)),
                dated.apply(side.dayAt(0.1)),
                dated.apply(side.dayAt(0.9)),
                rounded(side.sdDays(), 10),
                monthAndDay(side.latest()),
                monthAndDay(side.earliest()),
                side.leftOut(),
                side.isCounted() ? "counted" : "fitted",
                dates(side::countedAt, year),
                dates(side::fittedAt, year),
                rounded(side.halfWidthAt(0.5), 10),
                rounded(side.halfWidthAt(0.1), 10),
                Trend.of(side).map(trend -> drift(trend, side, year)).orElse(null));
    }

    private static Dates dates(Function<Double, OptionalDouble> dayAt, int year) {
        return new Dates(
                date(dayAt.apply(0.5), year),
                date(dayAt.apply(0.3), year),
                date(dayAt.apply(0.1), year),
                date(dayAt.apply(0.9), year));
    }

    private static Drift drift(Trend trend, FrostSide side, int year) {
        return new Drift(
                trend.firstYear(),
                trend.lastYear(),
                Math.round(10 * trend.daysPerDecade()) / 10.0,
                Math.round(1000 * trend.chance()) / 1000.0,
                trend.isClear(),
                date(trend.atItsEnd(side).dayAt(0.1), year),
                RecordNotes.words(trend, side));
    }

    private static @Nullable LocalDate date(OptionalDouble day, int year) {
        return day.isPresent() ? YearDay.in(year, day.getAsDouble()) : null;
    }

    private static @Nullable Double rounded(OptionalDouble value, int parts) {
        return value.isPresent() ? (Double) (Math.round(value.getAsDouble() * parts) / (double) parts) : null;
    }

    private static @Nullable String monthAndDay(Optional<LocalDate> day) {
        return day.map(MonthDay::from).map(one -> one.toString().substring(2)).orElse(null);
    }
}
