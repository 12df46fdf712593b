package warmshelf.frost.files;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;

/**
 * The heading of a file of U.S. Climate Normals by station (annual and seasonal): where each column stands. A column such as
 * {@code ANN-TMIN-PRBLST-T32FP50} holds the date of the last (PRBLST) or first (PRBFST) minimum at or below so many degrees
 * Fahrenheit, reached with a chance of so many per cent.
 */
final class NormalsHeading {
    private static final Pattern DATE = Pattern.compile("(?:ANN-)?TMIN-PRB(LST|FST)-T(36|32|28)FP(\\d0)");
    private static final List<String> PLACE = List.of("STATION", "LATITUDE", "LONGITUDE", "ELEVATION");

    private final Map<String, Integer> columns = new HashMap<>();
    private final Map<Threshold, Map<Side, Map<Integer, Integer>>> dates = new EnumMap<>(Threshold.class);
    private final int size;

    private NormalsHeading(List<String> cells) {
        size = cells.size();
        for (int i = 0; i < size; i++) {
            String cell = cells.get(i).toUpperCase(Locale.ROOT);
            columns.putIfAbsent(cell, i);
            Matcher date = DATE.matcher(cell);
            if (date.matches()) {
                levels(date).putIfAbsent(Integer.valueOf(date.group(3)), i);
            }
        }
    }

    private Map<Integer, Integer> levels(Matcher date) {
        Threshold threshold = switch (date.group(2)) {
            case "36" -> Threshold.LIGHT;
            case "32" -> Threshold.FROST;
            default -> Threshold.KILLING;
        };
        return dates.computeIfAbsent(threshold, one -> new EnumMap<>(Side.class))
                .computeIfAbsent(date.group(1).equals("LST") ? Side.SPRING : Side.AUTUMN, side -> new TreeMap<>());
    }

    /** The heading that a line is; empty where it is none. */
    static Optional<NormalsHeading> of(List<String> cells) {
        NormalsHeading heading = new NormalsHeading(cells);
        return heading.columns.keySet().containsAll(PLACE) && !heading.dates.isEmpty()
                ? Optional.of(heading)
                : Optional.empty();
    }

    int size() {
        return size;
    }

    /** The text of a column, empty where there is no such column. */
    String cell(List<String> row, String column) {
        Integer at = columns.get(column);
        return at == null ? "" : row.get(at);
    }

    /** The dates' texts by per cent; empty where the file has no columns for that threshold and side. */
    Map<Integer, String> dates(List<String> row, Threshold threshold, Side side) {
        Map<Integer, String> texts = new TreeMap<>();
        dates.getOrDefault(threshold, Map.of())
                .getOrDefault(side, Map.of())
                .forEach((percent, column) -> texts.put(percent, row.get(column)));
        return texts;
    }
}
