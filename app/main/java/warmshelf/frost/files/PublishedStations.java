package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.BadInput;
import warmshelf.frost.Threshold;
import warmshelf.frost.minima.CsvLine;
import warmshelf.frost.station.SeasonDays;
import warmshelf.frost.station.Side;
import warmshelf.frost.station.StationFrost;
import warmshelf.frost.station.StationRow;

/** Reads our own table of stations with published frost dates; see {@link StationRow}. */
final class PublishedStations implements RowReader {
    static final int LONGEST_CODE = 40;
    static final int LONGEST_NAME = 120;

    private final ImportedRows findings;
    private final StationCodes codes = new StationCodes();
    private List<String> heading = List.of();

    PublishedStations(ImportedRows findings) {
        this.findings = findings;
    }

    @Override
    public boolean hasHeading() {
        return true;
    }

    @Override
    public void begin(long line, String text) {
        heading = CsvLine.of(text).stream()
                .map(cell -> cell.toLowerCase(Locale.ROOT))
                .toList();
        List<String> missing = StationRow.missing(heading);
        if (!missing.isEmpty()) {
            throw new BadInput(
                    SAY.columnMissing(line, String.join(", ", missing), String.join(", ", StationRow.NEEDED)));
        }
    }

    @Override
    public void row(long line, String text) {
        List<String> cells = CsvLine.of(text);
        if (cells.size() != heading.size()) {
            throw new BadInput(SAY.columns(cells.size(), heading.size()));
        }
        StationFrost station = StationRow.read(column -> {
            int at = heading.indexOf(column);
            return at < 0 ? "" : cells.get(at);
        });
        List<FrostDay> days = days(station);
        codes.see(station.id(), station.name(), station.latitude(), station.longitude());
        findings.station(new StationReading(
                StationCodes.shortened(station.id(), LONGEST_CODE),
                name(station),
                station.latitude(),
                station.longitude(),
                station.elevationM(),
                days,
                List.of()));
    }

    private static String name(StationFrost station) {
        String name = station.name().isEmpty() ? station.id() : station.name();
        return StationCodes.shortened(
                name.isEmpty()
                        ? String.format(Locale.ROOT, "%.3f, %.3f", station.latitude(), station.longitude())
                        : name,
                LONGEST_NAME);
    }

    private static List<FrostDay> days(StationFrost station) {
        Optional<StationFrost.Dates> dates = station.dates();
        if (dates.isEmpty()) {
            return List.of(FrostDay.rare(Threshold.FROST, Side.SPRING), FrostDay.rare(Threshold.FROST, Side.AUTUMN));
        }
        List<FrostDay> days = new ArrayList<>();
        days.add(day(Side.SPRING, dates.get().spring()));
        days.add(day(Side.AUTUMN, dates.get().autumn()));
        return days;
    }

    private static FrostDay day(Side side, SeasonDays days) {
        if (!days.isInOrder(side)) {
            throw new BadInput(side == Side.SPRING ? SAY.springWrongWay() : SAY.autumnWrongWay());
        }
        double sd = days.yearSd().orElse(0);
        return new FrostDay(Threshold.FROST, side, null, days.medianDay(), sd > 0 ? (Double) sd : null, null);
    }
}
