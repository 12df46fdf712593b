package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.frost.Threshold;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.Hemisphere;
import warmshelf.frost.minima.RecordNotes;
import warmshelf.frost.minima.StationMinima;
import warmshelf.frost.minima.StationPoint;
import warmshelf.frost.minima.Trend;
import warmshelf.frost.minima.TrendNote;
import warmshelf.frost.station.Side;

/** Turns a station's daily minima into its frost at the three thresholds, season by season. */
final class NightsStation {
    /** Nearly a whole year: with less, what looks like the last frost may only be the last night noted. */
    private static final int LEAST_NIGHTS = 300;

    private NightsStation() {}

    /**
     * Counts a record.
     *
     * @param typed used where the file does not tell the place or the elevation
     * @param name what to call the station, or empty for the file's own name
     * @throws BadInput when nobody tells where the station lies, or no season has enough nights
     */
    static StationReading read(StationMinima station, @Nullable TypedPlace typed, String name, ImportedRows findings) {
        if (station.minima().size() < LEAST_NIGHTS) {
            throw new BadInput(SAY.tooFewNights(station.minima().size(), LEAST_NIGHTS));
        }
        TypedPlace place = place(station.point(), typed);
        List<FrostDay> days = new ArrayList<>();
        List<StationReading.Season> seasons = new ArrayList<>();
        for (Threshold threshold : Threshold.values()) {
            FrostRecord record = FrostRecord.of(station.minima(), Hemisphere.of(place.latitude()), threshold.celsius());
            add(threshold, Side.SPRING, record.spring(), days, seasons);
            add(threshold, Side.AUTUMN, record.autumn(), days, seasons);
            if (threshold == Threshold.FROST) {
                notes(station, record, findings);
            }
        }
        if (seasons.isEmpty()) {
            throw new BadInput(SAY.noSeason());
        }
        StationPoint point = station.point();
        String own = point == null || point.name().isBlank() ? station.station() : point.name();
        return new StationReading(
                StationCodes.shortened(station.station(), PublishedStations.LONGEST_CODE),
                StationCodes.shortened(name.isEmpty() ? own : name, PublishedStations.LONGEST_NAME),
                place.latitude(),
                place.longitude(),
                place.elevationM(),
                days,
                seasons);
    }

    private static TypedPlace place(@Nullable StationPoint point, @Nullable TypedPlace typed) {
        if (point == null) {
            if (typed == null) {
                throw new BadInput(SAY.noPlace());
            }
            return typed;
        }
        Double elevation = point.elevationM();
        if (elevation == null && typed == null) {
            throw new BadInput(SAY.noHeight());
        }
        TypedPlace place = new TypedPlace(
                point.latitude(),
                point.longitude(),
                elevation != null ? elevation : typed == null ? 0 : typed.elevationM());
        if (Math.abs(place.latitude()) > 90 || Math.abs(place.longitude()) > 180) {
            throw new BadInput(SAY.notOnEarth(String.valueOf(place.latitude()), String.valueOf(place.longitude())));
        }
        return place;
    }

    private static void add(
            Threshold threshold,
            Side side,
            FrostSide record,
            List<FrostDay> days,
            List<StationReading.Season> seasons) {
        if (record.seasons().isEmpty()) {
            return;
        }
        OptionalDouble median = record.medianDay();
        double sd = record.sdDays().orElse(0);
        days.add(new FrostDay(
                threshold,
                side,
                record.anyFrost().orElseThrow(),
                median.isPresent() ? (Double) median.getAsDouble() : null,
                sd > 0 ? (Double) sd : null,
                record.seasons().size()));
        record.seasons()
                .forEach(
                        season -> seasons.add(new StationReading.Season(threshold, side, season.year(), season.day())));
    }

    private static void notes(StationMinima station, FrostRecord record, ImportedRows findings) {
        for (FrostSide side : List.of(record.spring(), record.autumn())) {
            Trend.of(side)
                    .ifPresent(trend -> findings.note(TrendNote.of(trend, side).words()));
        }
        RecordNotes.of(station, record, true).forEach(note -> findings.note(note.words()));
    }
}
