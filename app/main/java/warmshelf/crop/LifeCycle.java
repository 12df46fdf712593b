package warmshelf.crop;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import warmshelf.ReferenceTable;

/**
 * How many years a crop lives, by {@code life-cycles.csv}; of one that is not listed nothing is said.
 *
 * @param cropInYear the year after sowing in which it first gives what it is grown for, 1 for the same
 * @param flowersInYear the year in which it flowers; null: no source says
 */
public record LifeCycle(Life life, int cropInYear, @Nullable Integer flowersInYear) {
    private static final Map<String, LifeCycle> CYCLES = new HashMap<>();

    /** How long it lives where winter does not kill it. */
    public enum Life {
        /** Grows in one year, flowers in the next, dies. */
        BIENNIAL,
        PERENNIAL;

        /** Its code. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    static {
        for (CSVRecord row : ReferenceTable.rows("life-cycles.csv")) {
            String flowers = row.get("flowers_in_year");
            CYCLES.put(
                    row.get("crop_id"),
                    new LifeCycle(
                            Life.valueOf(row.get("life").toUpperCase(Locale.ROOT)),
                            Integer.parseInt(row.get("crop_in_year")),
                            flowers.isEmpty() ? null : Integer.valueOf(flowers)));
        }
    }

    public static Optional<LifeCycle> of(Crop crop) {
        return Optional.ofNullable(CYCLES.get(crop.id()));
    }
}
