package warmshelf.guide;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Standing;

/** The facts of the trade with their sources. Pages take figures, titles and links from here, so that they cannot drift from it. */
final class PracticeTable {
    private final List<PracticeRow> rows;

    private PracticeTable(List<PracticeRow> rows) {
        this.rows = rows;
    }

    static PracticeTable bundled() {
        return new PracticeTable(ReferenceTable.rows("practice.csv").stream()
                .map(PracticeTable::row)
                .toList());
    }

    private static PracticeRow row(CSVRecord row) {
        return new PracticeRow(
                row.get("topic"),
                row.get("item"),
                row.get("value"),
                row.get("unit"),
                row.get("metric"),
                Amount.ofRow(row),
                Amount.metricOfRow(row),
                row.get("note"),
                Source.of(row.get("source_title"), row.get("source_url"), Standing.named(row.get("standing"))));
    }

    /**
     * The row of a topic and item.
     *
     * @param item as the table names it
     * @throws IllegalArgumentException when there is none, or more than one
     */
    PracticeRow row(String topic, String item) {
        List<PracticeRow> found = rows.stream()
                .filter(row -> row.topic().equals(topic))
                .filter(row -> row.item().equals(item))
                .toList();
        if (found.size() != 1) {
            throw new IllegalArgumentException(
                    "practice.csv has %d rows '%s, %s'".formatted(found.size(), topic, item));
        }
        return found.get(0);
    }

    List<PracticeRow> rows() {
        return rows;
    }
}
