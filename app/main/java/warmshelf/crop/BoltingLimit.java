package warmshelf.crop;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * The cold that makes a young crop flower instead of growing on, by {@code bolting.csv}. It is far above what the plants bear
 * ({@link ColdLimit}): they live on, and are of no use.
 *
 * @param belowC nights colder than this count, in degrees Celsius
 * @param days about so many of them in a row
 * @param waits whether the plants stay in until the last frost, because spring nights before it are that cold as a rule
 */
public record BoltingLimit(double belowC, int days, boolean waits) {
    private static final Map<String, BoltingLimit> LIMITS = new HashMap<>();

    static {
        for (CSVRecord row : ReferenceTable.rows("bolting.csv")) {
            LIMITS.put(
                    row.get("crop_id"),
                    new BoltingLimit(
                            Double.parseDouble(row.get("below_c")),
                            Integer.parseInt(row.get("days")),
                            row.get("waits_for_last_frost").equals("yes")));
        }
    }

    /** Empty where no source gives one. */
    public static Optional<BoltingLimit> of(Crop crop) {
        return Optional.ofNullable(LIMITS.get(crop.id()));
    }
}
