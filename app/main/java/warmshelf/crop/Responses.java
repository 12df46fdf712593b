package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * Chooses the best evidence for each crop: what the trade states where it knows better than a relative's trials or there are
 * none, the crop's own trials, a near relative's trials.
 */
final class Responses {
    // Texas A&M AgriLife Extension 2014, Starting sweet potatoes: 70 to 80 °F.
    private static final CelsiusRange SLIP_BED = new CelsiusRange(21, 27);
    // From memory: in what they shoot at all.
    private static final CelsiusRange SLIPS_SPROUT = new CelsiusRange(18, 32);

    private final EmergenceTable table = EmergenceTable.bundled();
    private final Map<String, PublishedRange> published = PublishedRange.bundled();
    private final EmergenceDisagreements reprints = EmergenceDisagreements.bundled();
    private final Map<String, StatedRangeResponse> stated = stated();

    TemperatureResponse of(CSVRecord row) {
        StatedRangeResponse range = stated.get(row.get("id"));
        if (range != null) {
            return range;
        }
        String vegetable = row.get("emergence_table");
        if (!vegetable.isEmpty()) {
            return new TestedResponse(
                    table.cellsOf(vegetable), published.get(vegetable), source(row, vegetable), reprints.of(vegetable));
        }
        if (RaisedFrom.named(row.get("raised_from")) == RaisedFrom.SLIPS) {
            return new SlipsResponse(SLIP_BED, SLIPS_SPROUT, SAY.raisedFromSlips());
        }
        throw new IllegalStateException("no emergence figures for " + row.get("id"));
    }

    private static String source(CSVRecord row, String vegetable) {
        if (row.get("table_is_for_this_crop").equals("yes")) {
            return EmergenceTable.SOURCE;
        }
        return SAY.ofNearRelative(vegetable, EmergenceTable.SOURCE);
    }

    private static Map<String, StatedRangeResponse> stated() {
        Map<String, StatedRangeResponse> ranges = new HashMap<>();
        for (CSVRecord row : ReferenceTable.rows("emergence-range.csv")) {
            ranges.put(
                    row.get("crop_id"),
                    new StatedRangeResponse(
                            number(row, "days_min"),
                            number(row, "days_max"),
                            new CelsiusRange(number(row, "at_c_low"), number(row, "at_c_high")),
                            row.get("source"),
                            false));
        }
        return ranges;
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
