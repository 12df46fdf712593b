package warmshelf.frost;

import static warmshelf.frost.FrostAnswer.date;
import static warmshelf.frost.FrostAnswer.tenths;
import static warmshelf.frost.FrostAnswer.thousandths;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.RecordNote;
import warmshelf.frost.minima.StationMinima;
import warmshelf.frost.minima.StationPoint;
import warmshelf.frost.minima.Trend;
import warmshelf.frost.minima.TrendNote;

/** The frost command's answer from a station's daily minima, of which seasons can be counted. */
final class MinimaAnswer {
    private MinimaAnswer() {}

    /** @param latitude of the station as it was typed, before that of the file; null: not typed */
    static FrostAnswer of(
            StationMinima station, FrostRecord record, @Nullable Double latitude, List<RecordNote> notes, int year) {
        StationPoint point = station.point();
        return new FrostAnswer(
                "daily-minima",
                point == null ? station.station() : point.name(),
                point == null || latitude != null ? latitude : (Double) point.latitude(),
                point == null ? null : (Double) point.longitude(),
                point == null ? null : point.elevationM(),
                record.thresholdC(),
                season(record.spring(), year),
                season(record.autumn(), year),
                List.of(),
                null,
                notes.stream().map(RecordNote::words).toList());
    }

    private static FrostAnswer.Season season(FrostSide side, int year) {
        OptionalDouble anyFrost = side.anyFrost();
        return new FrostAnswer.Season(
                side.seasons().size(),
                side.withFrost(),
                anyFrost.isPresent() ? (Double) thousandths(anyFrost.getAsDouble()) : null,
                FrostAnswer.Dates.of(side::dayAt, year),
                tenths(side.sdDays()),
                monthAndDay(side.latest()),
                monthAndDay(side.earliest()),
                null,
                null,
                counted(side, year));
    }

    private static FrostAnswer.Counted counted(FrostSide side, int year) {
        return new FrostAnswer.Counted(
                side.leftOut(),
                side.isCounted() ? "counted" : "fitted",
                FrostAnswer.Dates.of(side::countedAt, year),
                FrostAnswer.Dates.of(side::fittedAt, year),
                tenths(side.halfWidthAt(0.5)),
                tenths(side.halfWidthAt(0.1)),
                Trend.of(side).map(trend -> drift(trend, side, year)).orElse(null));
    }

    private static FrostAnswer.Drift drift(Trend trend, FrostSide side, int year) {
        return new FrostAnswer.Drift(
                trend.firstYear(),
                trend.lastYear(),
                tenths(trend.daysPerDecade()),
                thousandths(trend.chance()),
                trend.isClear(),
                date(trend.atItsEnd(side).dayAt(0.1), year),
                TrendNote.of(trend, side).words());
    }

    private static @Nullable String monthAndDay(Optional<LocalDate> day) {
        return day.map(MonthDay::from).map(one -> one.toString().substring(2)).orElse(null);
    }
}
