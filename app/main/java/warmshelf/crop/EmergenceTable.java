package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * The trials of Harrington and Minges (1954): days to emergence and share of normal seedlings of 24 vegetables at nine soil
 * temperatures. The table of days marks with NG where nothing grew and leaves empty what was not tested. Where it gives no
 * days but the companion table counted seedlings, seed came up, in days that neither prints.
 */
final class EmergenceTable {
    static final String SOURCE = SAY.trialsOf1954();

    private static final String NOTHING_GREW = "NG";
    /** Where the table of days says NG, one or two seedlings of a hundred in the other are no sign that seed comes up. */
    static final double NEXT_TO_NOTHING = 0.02;

    private final Map<String, NavigableMap<Double, TestedCell>> cells = new LinkedHashMap<>();

    private EmergenceTable() {}

    static EmergenceTable bundled() {
        EmergenceTable table = new EmergenceTable();
        Map<String, OptionalDouble> shares = shares();
        for (CSVRecord row : ReferenceTable.rows("emergence-days.csv")) {
            TestedCell cell = cell(row, shares.getOrDefault(key(row), OptionalDouble.empty()));
            table.cells
                    .computeIfAbsent(row.get("crop"), name -> new TreeMap<>())
                    .put(cell.celsius(), cell);
        }
        return table;
    }

    private static TestedCell cell(CSVRecord row, OptionalDouble share) {
        double celsius = Double.parseDouble(row.get("temp_c"));
        String days = row.get("days");
        if (!days.isEmpty() && !days.equals(NOTHING_GREW)) {
            return new TestedCell.CameUp(celsius, Double.parseDouble(days), share);
        }
        if (share.isPresent() && share.getAsDouble() > (days.isEmpty() ? 0 : NEXT_TO_NOTHING)) {
            return new TestedCell.CameUpUntimed(celsius, share.getAsDouble());
        }
        return days.isEmpty() ? new TestedCell.NotTested(celsius) : new TestedCell.NothingGrew(celsius);
    }

    /** The temperatures of one vegetable of the table, coldest first. */
    List<TestedCell> cellsOf(String vegetable) {
        NavigableMap<Double, TestedCell> row = cells.get(vegetable);
        if (row == null) {
            throw new IllegalArgumentException("the emergence table has no vegetable '" + vegetable + "'");
        }
        return List.copyOf(row.values());
    }

    private static Map<String, OptionalDouble> shares() {
        Map<String, OptionalDouble> shares = new LinkedHashMap<>();
        for (CSVRecord row : ReferenceTable.rows("normal-seedlings-percent.csv")) {
            String percent = row.get("percent_normal");
            shares.put(
                    key(row),
                    percent.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(percent) / 100));
        }
        return shares;
    }

    private static String key(CSVRecord row) {
        return row.get("crop") + " at " + row.get("temp_c");
    }
}
