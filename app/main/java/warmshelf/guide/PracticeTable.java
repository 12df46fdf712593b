package warmshelf.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Standing;

/**
 * The facts of the trade with their sources, and beside them the figures that texts quote: what a source says in words rather than in
 * the columns of its figure, and what the group itself does. Pages take figures, titles and links from here, so that they cannot drift
 * from it.
 */
final class PracticeTable {
    private static final PracticeTable BUNDLED = new PracticeTable();

    private final List<PracticeRow> published =
            ReferenceTable.rows("practice.csv").stream().map(PracticeTable::row).toList();
    private final Map<String, PracticeRow> byName = new LinkedHashMap<>();

    private PracticeTable() {
        List<PracticeRow> all = new ArrayList<>(published);
        ReferenceTable.rows("advice.csv").forEach(row -> all.add(quoted(row)));
        for (PracticeRow row : all) {
            if (byName.put(name(row.topic(), row.item()), row) != null) {
                throw new IllegalStateException("two rows are called '%s'".formatted(name(row.topic(), row.item())));
            }
        }
    }

    static PracticeTable bundled() {
        return BUNDLED;
    }

    private static PracticeRow row(CSVRecord row) {
        return row(
                row,
                row.get("metric"),
                Source.of(row.get("source_title"), row.get("source_url"), Standing.named(row.get("standing"))));
    }

    private static PracticeRow quoted(CSVRecord row) {
        return row(row, "", Source.of(Standing.COMMON_PRACTICE.word(), "", Standing.COMMON_PRACTICE));
    }

    private static PracticeRow row(CSVRecord row, String metric, Source source) {
        return new PracticeRow(
                row.get("topic"),
                row.get("item"),
                row.get("value"),
                row.get("unit"),
                metric,
                Amount.ofRow(row),
                Amount.metricOfRow(row),
                row.get("note"),
                source);
    }

    /**
     * The row of a topic and item.
     *
     * @param item as the table names it
     * @throws IllegalArgumentException when there is none
     */
    PracticeRow row(String topic, String item) {
        PracticeRow row = byName.get(name(topic, item));
        if (row == null) {
            throw new IllegalArgumentException("no row of practice is called '%s'".formatted(name(topic, item)));
        }
        return row;
    }

    private static String name(String topic, String item) {
        return topic + ": " + item;
    }

    /** What is published, without what is quoted beside it. */
    List<PracticeRow> rows() {
        return published;
    }
}
