package warmshelf.crop;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;

/** How soon the quickest kinds of a crop bear, by {@code quick-kinds.csv}; a crop's own days are those of its usual kinds. */
public final class QuickKinds {
    private static final Map<String, DaysToMaturity> DAYS = new HashMap<>();

    static {
        for (CSVRecord row : ReferenceTable.rows("quick-kinds.csv")) {
            DAYS.put(
                    row.get("crop_id"),
                    new DaysToMaturity(
                            Integer.parseInt(row.get("days_min")),
                            Integer.parseInt(row.get("days_max")),
                            Basis.named(row.get("basis"))));
        }
    }

    private QuickKinds() {}

    /** Empty where no source gives them. */
    public static Optional<DaysToMaturity> of(String cropId) {
        return Optional.ofNullable(DAYS.get(cropId));
    }
}
