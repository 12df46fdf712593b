package warmshelf.frost.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.BadInput;
import warmshelf.Given;

/**
 * Reads stations with published frost dates: a CSV with the columns {@code latitude}, {@code longitude}, {@code elevation_m},
 * {@code spring_p50}, {@code autumn_p50} (month-day, such as 05-14), and if it likes {@code station}, {@code station_id}, {@code spring_p90}
 * and {@code autumn_p90}; others are passed over. A station whose two dates are empty is one where frost is too rare.
 */
public final class StationFile {
    private static final List<String> NEEDED =
            List.of("latitude", "longitude", "elevation_m", "spring_p50", "autumn_p50");
    private static final int MOST_PROBLEMS = 5;
    private static final int MIDSUMMER = 213;
    private static final int MIDWINTER_SIDE = 32;

    private StationFile() {}

    /**
     * Reads all stations of a file.
     *
     * @throws BadInput when the file cannot be used, naming the first lines that are wrong; then nothing of it is taken
     */
    public static List<StationFrost> read(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput("'%s' is no file that can be read.".formatted(file));
        }
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .setAllowMissingColumnNames(true)
                .get();
        try (CSVParser parser = format.parse(Files.newBufferedReader(file, StandardCharsets.UTF_8))) {
            return rows(file, parser);
        } catch (IOException | IllegalArgumentException | java.io.UncheckedIOException unreadable) {
            throw new BadInput("'%s' cannot be read as a CSV file: %s".formatted(file, sentence(unreadable)));
        }
    }

    private static String sentence(Exception trouble) {
        String words = String.valueOf(trouble.getMessage());
        return words.endsWith(".") ? words : words + ".";
    }

    private static List<StationFrost> rows(Path file, CSVParser parser) {
        List<String> missing = NEEDED.stream()
                .filter(column -> !parser.getHeaderNames().contains(column))
                .toList();
        if (!missing.isEmpty()) {
            throw new BadInput("'%s' has no column %s; the heading needs %s."
                    .formatted(file, String.join(", ", missing), String.join(", ", NEEDED)));
        }
        List<StationFrost> stations = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (CSVRecord row : parser) {
            try {
                stations.add(station(row));
            } catch (BadInput wrong) {
                problems.add("Line %d: %s".formatted(parser.getCurrentLineNumber(), wrong.getMessage()));
            }
            if (problems.size() == MOST_PROBLEMS) {
                break;
            }
        }
        if (!problems.isEmpty()) {
            throw new BadInput("'%s' was refused as a whole. %s".formatted(file, String.join(" ", problems)));
        }
        if (stations.stream().noneMatch(StationFrost::hasDates)) {
            throw new BadInput("'%s' has no station with frost dates.".formatted(file));
        }
        return stations;
    }

    private static StationFrost station(CSVRecord row) {
        if (!row.isConsistent()) {
            throw new BadInput("%d columns where the heading has another number.".formatted(row.size()));
        }
        double latitude = Given.decimal("latitude", row.get("latitude"), -90, 90);
        return new StationFrost(
                cell(row, "station_id"),
                cell(row, "station"),
                latitude,
                Given.decimal("longitude", row.get("longitude"), -180, 180),
                Given.decimal("elevation_m", row.get("elevation_m"), -430, 6500),
                dates(row, latitude < 0));
    }

    private static Optional<StationFrost.Dates> dates(CSVRecord row, boolean south) {
        if (row.get("spring_p50").isEmpty() && row.get("autumn_p50").isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new StationFrost.Dates(
                new SeasonDays(spring(day(row, "spring_p50"), south), ninth(row, "spring_p90", Side.SPRING, south)),
                new SeasonDays(autumn(day(row, "autumn_p50"), south), ninth(row, "autumn_p90", Side.AUTUMN, south))));
    }

    private static OptionalDouble ninth(CSVRecord row, String column, Side side, boolean south) {
        if (cell(row, column).isEmpty()) {
            return OptionalDouble.empty();
        }
        int day = day(row, column);
        return OptionalDouble.of(side == Side.SPRING ? spring(day, south) : autumn(day, south));
    }

    /** Last frosts are looked for up to midsummer, the end of July or January: those after it are of the year before. */
    private static int spring(int day, boolean south) {
        if (south) {
            return day < MIDWINTER_SIDE ? day + 365 : day;
        }
        return day >= MIDSUMMER ? day - 365 : day;
    }

    /** First frosts are looked for from midsummer on; in the south that is after New Year. */
    private static int autumn(int day, boolean south) {
        return spring(day, south) + 365;
    }

    private static int day(CSVRecord row, String column) {
        try {
            MonthDay day = MonthDay.parse("--" + row.get(column));
            return day.atYear(2001).getDayOfYear();
        } catch (DateTimeException notADay) {
            throw new BadInput("%s was '%s'; month and day such as 05-14 are accepted."
                    .formatted(column, Given.shown(row.get(column))));
        }
    }

    private static String cell(CSVRecord row, String column) {
        return row.isMapped(column) ? row.get(column) : "";
    }
}
