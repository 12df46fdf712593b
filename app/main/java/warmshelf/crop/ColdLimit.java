package warmshelf.crop;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import warmshelf.ReferenceTable;

/**
 * How cold a night a hardened crop is known to bear outdoors without cover, by {@code cold-limits.csv}. A colder one is taken
 * to end it, though no table says that it does: they tell what was borne.
 *
 * @param bearsC the coldest night that a published table vouches for, in degrees Celsius; 0: frost kills it
 * @param otherC what a second table vouches for, where it says less or the same; null: there is none
 */
public record ColdLimit(double bearsC, @Nullable Double otherC) {
    private static final Map<String, ColdLimit> OF_CROP = new HashMap<>();
    private static final Map<Hardiness, ColdLimit> OF_CLASS = new EnumMap<>(Hardiness.class);

    static {
        for (CSVRecord row : ReferenceTable.rows("cold-limits.csv")) {
            String other = row.get("other_c");
            ColdLimit limit = new ColdLimit(
                    Double.parseDouble(row.get("bears_c")), other.isEmpty() ? null : Double.valueOf(other));
            if (row.get("crop_id").isEmpty()) {
                OF_CLASS.put(Hardiness.named(row.get("of_class")), limit);
            } else {
                OF_CROP.put(row.get("crop_id"), limit);
            }
        }
    }

    /** The crop's own; that of its class where no table names it. */
    public static ColdLimit of(Crop crop) {
        ColdLimit own = OF_CROP.get(crop.id());
        return own == null ? of(crop.hardiness()) : own;
    }

    /** What the crops of a class bear at least. */
    static ColdLimit of(Hardiness hardiness) {
        ColdLimit limit = OF_CLASS.get(hardiness);
        if (limit == null) {
            throw new IllegalStateException("cold-limits.csv has no row for " + hardiness.words());
        }
        return limit;
    }

    /** Whether the first frost ends it. */
    public boolean frostKills() {
        return bearsC >= 0;
    }
}
