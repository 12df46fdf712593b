package warmshelf.supply;

import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * A whole tray divided into cells; the volumes are those of {@code containers.csv}, from memory and within a quarter.
 *
 * @param cells in a whole tray
 * @param cellMl millilitres that one cell holds
 */
record CellTray(int cells, double cellMl) {
    // Nominally 10 by 20 inches inside (containers.csv).
    static final double LENGTH_MM = 508;
    static final double WIDTH_MM = 254;
    private static final TreeMap<Integer, CellTray> TRAYS = trays();

    /** The tray of so many cells, or the next finer one that is known, or the finest. */
    static CellTray of(int cells) {
        Map.Entry<Integer, CellTray> known = TRAYS.ceilingEntry(cells);
        return known == null ? TRAYS.lastEntry().getValue() : known.getValue();
    }

    /** The area of one cell's share of the tray, in square millimetres. */
    double cellArea() {
        return LENGTH_MM * WIDTH_MM / cells;
    }

    private static TreeMap<Integer, CellTray> trays() {
        TreeMap<Integer, CellTray> trays = new TreeMap<>();
        for (CSVRecord row : ReferenceTable.rows("containers.csv")) {
            if (row.get("code").equals("insert")) {
                int cells = Integer.parseInt(row.get("cells"));
                trays.put(cells, new CellTray(cells, Double.parseDouble(row.get("cell_ml"))));
            }
        }
        return trays;
    }
}
