package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import warmshelf.Given;

/**
 * GHCN-Daily by station, one line a day and a column for each element (the service's access folder): {@code STATION}, {@code
 * DATE}, the station's place and name, {@code TMIN} in tenths of a degree and {@code TMIN_ATTRIBUTES}, which holds the
 * measurement, quality and source flags between commas.
 */
final class GhcnTable implements MinimaLines {
    private static final Pattern ISO_DAY = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");

    private final MinimaCollector gathering;
    private final List<String> heading;
    private boolean placed;

    GhcnTable(MinimaCollector gathering, List<String> heading) {
        this.gathering = gathering;
        this.heading = heading;
    }

    /** Whether a heading, in small letters, is one of this layout. */
    static boolean isHeading(List<String> heading) {
        return heading.containsAll(List.of("station", "date", "tmin", "tmin_attributes"));
    }

    @Override
    public void read(int number, String line) {
        List<String> cells = CsvLine.of(line);
        if (cells.size() != heading.size()) {
            gathering.problem(number, SAY.columns(cells.size(), heading.size(), Given.shown(line)));
            return;
        }
        Matcher day = ISO_DAY.matcher(cell(cells, "date"));
        if (!day.matches()) {
            gathering.problem(number, SAY.noDate(Given.shown(cell(cells, "date"))));
            return;
        }
        gathering.station(number, cell(cells, "station"));
        place(cells);
        LocalDate date = gathering.day(
                number, Integer.parseInt(day.group(1)), Integer.parseInt(day.group(2)), Integer.parseInt(day.group(3)));
        String minimum = cell(cells, "tmin");
        if (date != null && !minimum.isEmpty()) {
            GhcnRows.tenths(gathering, number, date, minimum, quality(cell(cells, "tmin_attributes")));
        }
    }

    private static String quality(String attributes) {
        String[] flags = attributes.split(",", -1);
        return flags.length > 1 ? flags[1] : "";
    }

    private void place(List<String> cells) {
        if (placed || !heading.containsAll(List.of("name", "latitude", "longitude", "elevation"))) {
            return;
        }
        placed = true;
        try {
            double elevation = Double.parseDouble(cell(cells, "elevation"));
            gathering.point(new StationPoint(
                    cell(cells, "name"),
                    Double.parseDouble(cell(cells, "latitude")),
                    Double.parseDouble(cell(cells, "longitude")),
                    // the service writes -999.9 for an elevation that it does not know
                    elevation < -500 ? null : elevation));
        } catch (NumberFormatException notAPlace) {
            // a station without a place on the map still has nights; it is then told by its code alone
        }
    }

    private String cell(List<String> cells, String column) {
        return cells.get(heading.indexOf(column));
    }
}
