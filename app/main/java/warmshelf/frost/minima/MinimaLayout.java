package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The layouts of daily minima that can be read. */
public enum MinimaLayout {
    PLAIN("plain"),
    GHCN_CSV("ghcn-csv"),
    GHCN_DLY("ghcn-dly");

    private static final Pattern ROW = Pattern.compile("\"?[A-Za-z0-9_-]{11}\"?,\"?\\d{8}\"?,.*");

    private final String word;

    MinimaLayout(String word) {
        this.word = word;
    }

    /** The layout of a name as commands take it. */
    public static Optional<MinimaLayout> named(String word) {
        return Arrays.stream(values())
                .filter(layout -> layout.word.equals(word))
                .findFirst();
    }

    String words() {
        return switch (this) {
            case PLAIN -> SAY.plainLayout();
            case GHCN_CSV -> SAY.ghcnCsvLayout();
            case GHCN_DLY -> SAY.ghcnDlyLayout();
        };
    }

    /** The layout that a file's first line shows. */
    public static Optional<MinimaLayout> of(String firstLine) {
        List<String> heading = heading(firstLine);
        if (GhcnFixedWidth.isLine(firstLine)) {
            return Optional.of(GHCN_DLY);
        }
        if (GhcnTable.isHeading(heading) || isRow(firstLine) || isRowHeading(heading)) {
            return Optional.of(GHCN_CSV);
        }
        return PlainLines.isHeading(heading) ? Optional.of(PLAIN) : Optional.empty();
    }

    /** What reads the lines below the first; empty when the first line is not of this layout. */
    Optional<MinimaLines> lines(String firstLine, MinimaCollector gathering) {
        List<String> heading = heading(firstLine);
        return switch (this) {
            case PLAIN ->
                PlainLines.isHeading(heading) ? Optional.of(new PlainLines(gathering, heading)) : Optional.empty();
            case GHCN_DLY ->
                GhcnFixedWidth.isLine(firstLine) ? Optional.of(new GhcnFixedWidth(gathering)) : Optional.empty();
            case GHCN_CSV -> {
                if (GhcnTable.isHeading(heading)) {
                    yield Optional.of(new GhcnTable(gathering, heading));
                }
                yield isRow(firstLine) || isRowHeading(heading)
                        ? Optional.of(new GhcnRows(gathering))
                        : Optional.empty();
            }
        };
    }

    /** Whether a file's first line is data already rather than a heading. */
    static boolean isData(String firstLine) {
        return isRow(firstLine) || GhcnFixedWidth.isLine(firstLine);
    }

    private static boolean isRow(String line) {
        return ROW.matcher(line).matches();
    }

    private static boolean isRowHeading(List<String> heading) {
        return heading.size() >= 7
                && List.of("id", "station").contains(heading.get(0))
                && heading.get(1).contains("date")
                && heading.get(2).equals("element");
    }

    private static List<String> heading(String line) {
        return CsvLine.of(line).stream()
                .map(cell -> cell.toLowerCase(Locale.ROOT))
                .toList();
    }
}
