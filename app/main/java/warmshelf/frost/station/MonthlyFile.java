package warmshelf.frost.station;

import static warmshelf.frost.station.StationSentences.SAY;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.table.HeadedTable;

/**
 * Reads stations' monthly mean minima: a CSV with the columns {@code station_id} and {@code jan_c} to {@code dec_c} in degrees
 * Celsius. Only stations that also have published dates are taken.
 */
public final class MonthlyFile {
    private static final List<String> MONTHS = List.of(
            "jan_c", "feb_c", "mar_c", "apr_c", "may_c", "jun_c", "jul_c", "aug_c", "sep_c", "oct_c", "nov_c", "dec_c");

    private MonthlyFile() {}

    /**
     * Reads the stations that are among those given.
     *
     * @throws BadInput when the file cannot be used, naming the line
     */
    public static List<MonthlyCheck.Pair> read(Path file, List<StationFrost> stations) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(SAY.noFile(file.toString()));
        }
        Map<String, StationFrost> dated = stations.stream()
                .filter(StationFrost::hasDates)
                .collect(Collectors.toMap(StationFrost::id, Function.identity(), (first, again) -> first));
        try (CSVParser parser = HeadedTable.parse(Files.newBufferedReader(file, StandardCharsets.UTF_8))) {
            if (!parser.getHeaderNames().contains("station_id")
                    || !parser.getHeaderNames().containsAll(MONTHS)) {
                throw new BadInput(SAY.monthsMissing(file.toString()));
            }
            List<MonthlyCheck.Pair> pairs = new ArrayList<>();
            for (CSVRecord row : parser) {
                StationFrost station = row.isConsistent() ? dated.get(row.get("station_id")) : null;
                if (station != null
                        && MONTHS.stream().noneMatch(month -> row.get(month).isEmpty())) {
                    pairs.add(new MonthlyCheck.Pair(station, means(row, parser.getCurrentLineNumber())));
                }
            }
            return pairs;
        } catch (IOException | UncheckedIOException | IllegalArgumentException unreadable) {
            throw new BadInput(SAY.notCsv(file.toString(), String.valueOf(unreadable.getMessage())));
        }
    }

    private static List<Double> means(CSVRecord row, long line) {
        return MONTHS.stream()
                .map(month -> Given.decimal(SAY.cellOfLine(line, month), row.get(month), -90, 50))
                .toList();
    }
}
