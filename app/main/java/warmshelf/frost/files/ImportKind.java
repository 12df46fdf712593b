package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.frost.minima.CsvLine;
import warmshelf.frost.minima.MinimaLayout;
import warmshelf.frost.station.StationRow;

/** The kinds of files that evidence of frost comes in. */
public enum ImportKind {
    STATIONS,
    NORMALS,
    NIGHTS,
    POSTCODES;

    /** As forms, addresses and the database write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** For example 'daily minima of one station'. */
    public String words() {
        return switch (this) {
            case STATIONS -> SAY.stations();
            case NORMALS -> SAY.normals();
            case NIGHTS -> SAY.nights();
            case POSTCODES -> SAY.postcodes();
        };
    }

    /** What such a file looks like. */
    String accepted() {
        return switch (this) {
            case STATIONS -> SAY.stationsAccepted();
            case NORMALS -> SAY.normalsAccepted();
            case NIGHTS -> SAY.nightsAccepted();
            case POSTCODES -> SAY.postcodesAccepted();
        };
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
