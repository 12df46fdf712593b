package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.SeasonFrost;
import warmshelf.frost.station.Side;

/**
 * What the page of one import shows.
 *
 * @param waits its turn has not come yet
 * @param stations the first ones
 * @param nights dates counted from a station's nights, by threshold
 */
public record ImportPage(
        FrostImport entry,
        boolean stopped,
        boolean waits,
        LocalDate startedOn,
        List<StationLine> stations,
        List<CountedDates> nights,
        List<StationStore.CountryCount> countries,
        List<PostcodeRow> places,
        List<ImportProblem> problems) {

    private static final int ROWS_SHOWN = 20;
    private static final int ANY_COMMON_YEAR = 2001;

    /**
     * Dates of one threshold, in any year; null: fewer seasons have a frost.
     *
     * @param seasons number counted, with the years
     */
    public record CountedDates(
            Threshold threshold,
            String season,
            String seasons,
            int withFrost,
            @Nullable LocalDate half,
            @Nullable LocalDate threeInTen,
            @Nullable LocalDate oneInTen) {}

    static ImportPage of(
            FrostImport entry, boolean waits, Instant now, ZoneId zone, ImportStore imports, StationStore stations) {
        UUID id = entry.id();
        List<StationLine> lines = stations.of(id, ROWS_SHOWN);
        boolean postcodes = entry.kind() == ImportKind.POSTCODES;
        return new ImportPage(
                entry,
                entry.isStopped(now),
                waits,
                LocalDate.ofInstant(entry.startedAt(), zone),
                lines,
                entry.kind() == ImportKind.NIGHTS && !lines.isEmpty()
                        ? nights(lines.get(0).id(), stations)
                        : List.of(),
                postcodes ? stations.countries(id) : List.of(),
                postcodes ? stations.places(id, ROWS_SHOWN) : List.of(),
                imports.problems(id));
    }

    private static List<CountedDates> nights(UUID station, StationStore stations) {
        List<CountedDates> dates = new ArrayList<>();
        for (Threshold threshold : Threshold.values()) {
            for (Side side : Side.values()) {
                FrostSide seasons = stations.seasons(station, threshold, side);
                if (!seasons.seasons().isEmpty()) {
                    dates.add(new CountedDates(
                            threshold,
                            side == Side.SPRING ? SAY.lastOfSpring() : SAY.firstOfAutumn(),
                            words(seasons.seasons()),
                            seasons.withFrost(),
                            date(seasons.dayAt(0.5)),
                            date(seasons.dayAt(0.3)),
                            date(seasons.dayAt(0.1))));
                }
            }
        }
        return dates;
    }

    private static String words(List<SeasonFrost> seasons) {
        return SAY.seasonsOf(
                seasons.size(),
                seasons.get(0).year(),
                seasons.get(seasons.size() - 1).year());
    }

    private static @Nullable LocalDate date(OptionalDouble day) {
        return day.isPresent() ? YearDay.in(ANY_COMMON_YEAR, day.getAsDouble()) : null;
    }

    /** Whether the page is to be looked at again in a moment. */
    public boolean isBusy() {
        return entry.state() == ImportState.READING && !stopped;
    }

    public boolean isReady() {
        return entry.state() == ImportState.READY;
    }

    public boolean isTaken() {
        return entry.state() == ImportState.TAKEN;
    }

    /** Whether there is something to give up. */
    public boolean isOpen() {
        return entry.state() == ImportState.READING || isReady();
    }

    /** How it stands, in words. */
    public String stateWords() {
        return stopped ? SAY.stopped() : entry.state().words();
    }

    public boolean hasStations() {
        return entry.kind() == ImportKind.STATIONS || entry.kind() == ImportKind.NORMALS;
    }

    /** How much has been read, 0 to 100. */
    public long percent() {
        return entry.bytesTotal() == 0 ? 0 : Math.min(100, 100 * entry.bytesRead() / entry.bytesTotal());
    }

    /** How far it is, in a sentence. */
    public String progressWords() {
        if (waits) {
            return SAY.waitsForTurn();
        }
        return percent() < 100 ? SAY.readSoFar(percent(), size(), entry.rowsRead()) : SAY.allRead(entry.rowsRead());
    }

    private String size() {
        long bytes = entry.bytesTotal();
        return bytes < 1_000_000 ? SAY.kilobytes(Math.max(1, bytes / 1000)) : SAY.megabytes(bytes / 1_000_000);
    }

    /** What was found, or why it was refused, sentence by sentence; each wrong line on its own. */
    public List<String> sentences() {
        return entry.words().isEmpty() ? List.of() : Arrays.asList(entry.words().split("\n"));
    }
}
