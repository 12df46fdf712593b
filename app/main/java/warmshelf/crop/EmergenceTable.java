package warmshelf.crop;

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
 * temperatures. A temperature marked NG (nothing grew) has a cell without days; one that was not tested has no cell.
 */
final class EmergenceTable {
    static final String SOURCE =
            "days to emergence and share of normal seedlings by soil temperature, sown half an inch "
                    + "deep, Harrington & Minges (1954) as reprinted in Knott's Handbook";

    private final Map<String, NavigableMap<Double, TestedCell>> cells = new LinkedHashMap<>();

    private EmergenceTable() {}

    static EmergenceTable bundled() {
        EmergenceTable table = new EmergenceTable();
        Map<String, OptionalDouble> shares = shares();
        for (CSVRecord row : ReferenceTable.rows("emergence-days.csv")) {
            String days = row.get("days");
            if (days.isEmpty()) {
                continue;
            }
            OptionalDouble tested =
                    days.equals("NG") ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(days));
            double celsius = Double.parseDouble(row.get("temp_c"));
            OptionalDouble share = shares.getOrDefault(key(row), OptionalDouble.empty());
            table.cells
                    .computeIfAbsent(row.get("crop"), name -> new TreeMap<>())
                    .put(celsius, new TestedCell(celsius, tested, share));
        }
        return table;
    }

    /** The trial temperatures of one vegetable of the table, coldest first. */
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
