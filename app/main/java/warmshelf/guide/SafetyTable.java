package warmshelf.guide;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Standing;

/** The hazards of the trade, each with whom to defer to and where that stands. */
final class SafetyTable {
    private static final SafetyTable BUNDLED = new SafetyTable();

    private final List<SafetyRow> rows =
            ReferenceTable.rows("safety.csv").stream().map(SafetyTable::row).toList();

    private SafetyTable() {}

    static SafetyTable bundled() {
        return BUNDLED;
    }

    private static SafetyRow row(CSVRecord row) {
        return new SafetyRow(
                row.get("hazard"),
                row.get("authority_to_defer_to"),
                Source.of(row.get("source_title"), row.get("source_url"), Standing.named(row.get("standing"))));
    }

    /**
     * The row of a hazard.
     *
     * @throws IllegalArgumentException when there is none
     */
    SafetyRow row(String hazard) {
        return rows.stream()
                .filter(row -> row.hazard().equals(hazard))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("safety.csv has no hazard '" + hazard + "'"));
    }
}
