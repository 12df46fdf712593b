package warmshelf.finding;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.SproutingTime;
import warmshelf.table.HeadedTable;

/** A table with one row a seed: {@code arm,unit,last_without,first_with,status}, days since sowing. */
final class SeedFile {
    private static final List<String> COLUMNS = List.of("arm", "unit", "last_without", "first_with", "status");
    private static final double MOST_DAYS = 10_000;

    private SeedFile() {}

    /**
     * The arms in the order in which they first appear.
     *
     * @param exact whether {@code first_with} is the time itself, also the last one at which a seed that did not sprout was seen
     * @throws BadInput when the file cannot be read as such a table
     */
    static List<Arm> read(Path file, boolean exact) {
        Map<String, List<SproutingTime>> times = new LinkedHashMap<>();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                CSVParser rows = HeadedTable.parse(reader)) {
            requireColumns(file, rows.getHeaderNames());
            for (CSVRecord row : rows) {
                if (!row.isConsistent()) {
                    throw inRow(row, "the row", row.size() + " cells", "as many cells as the first line has");
                }
                times.computeIfAbsent(arm(row), name -> new ArrayList<>()).add(exact ? exact(row) : between(row));
            }
        } catch (NoSuchFileException missing) {
            throw new BadInput("FILE was '%s'; there is no such file.".formatted(Given.shown(file.toString())));
        } catch (MalformedInputException wrong) {
            throw new BadInput("FILE was '%s'; a table in UTF-8 is accepted.".formatted(Given.shown(file.toString())));
        } catch (UncheckedIOException | IllegalArgumentException unreadable) {
            throw new BadInput("FILE was '%s'; a table with commas between its cells is accepted."
                    .formatted(Given.shown(file.toString())));
        } catch (IOException unreadable) {
            throw new BadInput("FILE was '%s'; it cannot be read.".formatted(Given.shown(file.toString())));
        }
        if (times.isEmpty()) {
            throw new BadInput("FILE was '%s'; it has no seed, at least one row is needed."
                    .formatted(Given.shown(file.toString())));
        }
        return times.entrySet().stream()
                .map(each -> new Arm(each.getKey(), each.getValue()))
                .toList();
    }

    private static void requireColumns(Path file, List<String> found) {
        for (String column : COLUMNS) {
            if (!found.contains(column)) {
                throw new BadInput("FILE was '%s', without the column %s; its first line has to be %s."
                        .formatted(Given.shown(file.toString()), column, String.join(",", COLUMNS)));
            }
        }
    }

    private static String arm(CSVRecord row) {
        String name = row.get("arm");
        if (name.isEmpty()) {
            throw inRow(row, "arm", "empty", "the name of a way");
        }
        return name;
    }

    private static SproutingTime between(CSVRecord row) {
        double after = day(row, "last_without");
        if (!sprouted(row)) {
            return SproutingTime.notBy(after);
        }
        double by = day(row, "first_with");
        if (by <= after) {
            throw inRow(
                    row, "first_with", row.get("first_with"), "a day after last_without, " + row.get("last_without"));
        }
        return SproutingTime.between(after, by);
    }

    private static SproutingTime exact(CSVRecord row) {
        if (sprouted(row)) {
            return SproutingTime.at(day(row, "first_with"));
        }
        return SproutingTime.notBy(day(row, row.get("first_with").isEmpty() ? "last_without" : "first_with"));
    }

    private static boolean sprouted(CSVRecord row) {
        return switch (row.get("status")) {
            case "sprouted" -> true;
            case "not" -> false;
            default -> throw inRow(row, "status", row.get("status"), "sprouted or not");
        };
    }

    private static double day(CSVRecord row, String column) {
        return Given.decimal("%s in row %d".formatted(column, row.getRecordNumber()), row.get(column), 0, MOST_DAYS);
    }

    private static BadInput inRow(CSVRecord row, String column, String given, String accepted) {
        return new BadInput("%s in row %d was '%s'; %s is accepted."
                .formatted(column, row.getRecordNumber(), Given.shown(given), accepted));
    }
}
