package warmshelf.crop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import warmshelf.ReferenceTable;

/**
 * The soil temperatures at which extension services say that a vegetable's seed comes up: those on which all of them agree.
 *
 * @param best those that suit it; empty where they agree on none
 */
record PublishedRange(CelsiusRange possible, Optional<CelsiusRange> best) {

    /** By vegetable; one without both a lowest and a highest temperature has none. */
    static Map<String, PublishedRange> bundled() {
        Map<String, List<CSVRecord>> rows = new LinkedHashMap<>();
        for (CSVRecord row : ReferenceTable.rows("soil-temperature-range.csv")) {
            rows.computeIfAbsent(row.get("crop"), crop -> new ArrayList<>()).add(row);
        }
        Map<String, PublishedRange> ranges = new LinkedHashMap<>();
        rows.forEach((crop, published) -> common(published, "min_c", "max_c")
                .ifPresent(possible ->
                        ranges.put(crop, new PublishedRange(possible, common(published, "opt_low_c", "opt_high_c")))));
        return ranges;
    }

    /** The range that all sources which print an end agree on. */
    private static Optional<CelsiusRange> common(List<CSVRecord> rows, String lowest, String highest) {
        Double low = null;
        Double high = null;
        for (CSVRecord row : rows) {
            Double rowLow = number(row, lowest);
            Double rowHigh = number(row, highest);
            low = low == null || (rowLow != null && rowLow > low) ? rowLow : low;
            high = high == null || (rowHigh != null && rowHigh < high) ? rowHigh : high;
        }
        return low == null || high == null || low > high ? Optional.empty() : Optional.of(new CelsiusRange(low, high));
    }

    private static @Nullable Double number(CSVRecord row, String column) {
        String cell = row.get(column);
        return cell.isEmpty() ? null : Double.valueOf(cell);
    }
}
