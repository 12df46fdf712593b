package warmshelf.frost.station;

import static warmshelf.frost.station.StationSentences.SAY;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.BadInput;
import warmshelf.table.HeadedTable;

/** Reads a whole file of stations with published frost dates, a CSV with the columns of {@link StationRow}. */
public final class StationFile {
    private static final int MOST_PROBLEMS = 5;

    private StationFile() {}

    /**
     * Reads all stations of a file.
     *
     * @throws BadInput when the file cannot be used, naming the first lines that are wrong; then nothing of it is taken
     */
    public static List<StationFrost> read(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(SAY.noFile(file.toString()));
        }
        try (CSVParser parser = HeadedTable.parse(Files.newBufferedReader(file, StandardCharsets.UTF_8))) {
            return rows(file, parser);
        } catch (IOException | IllegalArgumentException | java.io.UncheckedIOException unreadable) {
            throw new BadInput(SAY.notCsv(file.toString(), sentence(unreadable)));
        }
    }

    private static String sentence(Exception trouble) {
        String words = String.valueOf(trouble.getMessage());
        return words.endsWith(".") ? words : words + ".";
    }

    private static List<StationFrost> rows(Path file, CSVParser parser) {
        List<String> missing = StationRow.missing(parser.getHeaderNames());
        if (!missing.isEmpty()) {
            throw new BadInput(SAY.columnsMissing(
                    file.toString(), String.join(", ", missing), String.join(", ", StationRow.NEEDED)));
        }
        List<StationFrost> stations = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (CSVRecord row : parser) {
            try {
                stations.add(station(row));
            } catch (BadInput wrong) {
                problems.add(SAY.lineProblem(parser.getCurrentLineNumber(), String.valueOf(wrong.getMessage())));
            }
            if (problems.size() == MOST_PROBLEMS) {
                break;
            }
        }
        if (!problems.isEmpty()) {
            throw new BadInput(SAY.refused(file.toString(), String.join("\n", problems)));
        }
        if (stations.stream().noneMatch(StationFrost::hasDates)) {
            throw new BadInput(SAY.noDates(file.toString()));
        }
        return stations;
    }

    private static StationFrost station(CSVRecord row) {
        if (!row.isConsistent()) {
            throw new BadInput(SAY.columnsOff(row.size()));
        }
        return StationRow.read(column -> row.isMapped(column) ? row.get(column) : "");
    }
}
