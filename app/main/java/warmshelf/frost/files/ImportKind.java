package warmshelf.frost.files;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.frost.minima.CsvLine;
import warmshelf.frost.minima.MinimaLayout;
import warmshelf.frost.station.StationRow;

/** The kinds of files that evidence of frost comes in. */
public enum ImportKind {
    STATIONS(
            "stations with published frost dates",
            "a CSV with latitude, longitude, elevation_m, spring_p50, autumn_p50"),
    NORMALS(
            "a national service’s climate normals by station",
            "a CSV with STATION, LATITUDE and columns such as ANN-TMIN-PRBLST-T32FP50"),
    NIGHTS("daily minima of one station", "a CSV with date and tmin or tmin_f, or GHCN-Daily as .csv or .dly"),
    POSTCODES("postcodes of a country", "GeoNames’ postal codes, tab-separated");

    private final String words;
    private final String accepted;

    ImportKind(String words, String accepted) {
        this.words = words;
        this.accepted = accepted;
    }

    /** As forms, addresses and the database write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** For example 'daily minima of one station'. */
    public String words() {
        return words;
    }

    /** What such a file looks like. */
    String accepted() {
        return accepted;
    }

    public static Optional<ImportKind> named(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** The kind that a file's first line shows; empty where it shows none. */
    static Optional<ImportKind> of(String firstLine) {
        if (PostcodeFile.isRow(firstLine)) {
            return Optional.of(POSTCODES);
        }
        List<String> heading = CsvLine.of(firstLine);
        if (NormalsHeading.of(heading).isPresent()) {
            return Optional.of(NORMALS);
        }
        List<String> small =
                heading.stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
        // one of the dates' columns is enough to know what is meant; what else is missing is then said by name
        if (small.contains("spring_p50")
                || small.contains("autumn_p50")
                || StationRow.missing(small).isEmpty()) {
            return Optional.of(STATIONS);
        }
        return MinimaLayout.of(firstLine).map(layout -> NIGHTS);
    }
}
