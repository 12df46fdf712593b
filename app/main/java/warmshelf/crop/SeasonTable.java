package warmshelf.crop;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/** The tables of what is known of the ends of a crop's season, and where each row of them comes from. */
public enum SeasonTable {
    COLD("cold-limits.csv"),
    BOLTING("bolting.csv"),
    QUICK_KINDS("quick-kinds.csv"),
    AUTUMN("autumn-crops.csv"),
    OVER_WINTER("overwintering.csv"),
    AGAIN("sow-again.csv"),
    LIFE("life-cycles.csv");

    private static final Map<SeasonTable, Map<String, Origin>> ORIGINS = new EnumMap<>(SeasonTable.class);

    static {
        for (SeasonTable table : values()) {
            Map<String, Origin> origins = new HashMap<>();
            for (CSVRecord row : ReferenceTable.rows(table.file)) {
                origins.put(
                        row.get("crop_id"),
                        new Origin(
                                row.get("source_title"), row.get("source_url"), Standing.named(row.get("standing"))));
            }
            ORIGINS.put(table, origins);
        }
    }

    private final String file;

    SeasonTable(String file) {
        this.file = file;
    }

    /** Where a row comes from. */
    public record Origin(String title, String url, Standing standing) {}

    /** Where the row of a crop comes from; empty where it has none. */
    public Optional<Origin> origin(Crop crop) {
        return Optional.ofNullable(ORIGINS.getOrDefault(this, Map.of()).get(crop.id()));
    }
}
