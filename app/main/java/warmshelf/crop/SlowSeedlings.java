package warmshelf.crop;

import java.util.Set;
import java.util.stream.Collectors;
import warmshelf.ReferenceTable;

/** The crops whose seedlings take weeks to their first true leaves: common practice, in {@code slow-seedlings.csv}. */
public final class SlowSeedlings {
    private static final Set<String> IDS = ReferenceTable.rows("slow-seedlings.csv").stream()
            .map(row -> row.get("crop_id"))
            .collect(Collectors.toUnmodifiableSet());

    private SlowSeedlings() {}

    public static boolean has(Crop crop) {
        return IDS.contains(crop.id());
    }
}
