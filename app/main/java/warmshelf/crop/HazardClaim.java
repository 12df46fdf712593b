package warmshelf.crop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * What a list of poison centres, veterinarians or an extension service says of a crop.
 *
 * @param hazard what it warns of; empty where it says that nothing is known
 * @param says in our words
 */
public record HazardClaim(
        Optional<CropHazard> hazard, String says, Standing standing, String source, String sourceUrl) {
    private static final String NONE = "none";

    /** The claims by crop id, in the table's order. A crop that is not there was looked up nowhere. */
    static Map<String, List<HazardClaim>> bundled() {
        return Bundled.CLAIMS;
    }

    private static HazardClaim of(CSVRecord row) {
        String code = row.get("hazard");
        return new HazardClaim(
                code.equals(NONE) ? Optional.empty() : Optional.of(CropHazard.of(code)),
                row.get("says"),
                Standing.named(row.get("standing")),
                row.get("source_title"),
                row.get("source_url"));
    }

    private static final class Bundled {
        static final Map<String, List<HazardClaim>> CLAIMS = read();

        private static Map<String, List<HazardClaim>> read() {
            Map<String, List<HazardClaim>> claims = new LinkedHashMap<>();
            for (CSVRecord row : ReferenceTable.rows("crop-hazards.csv")) {
                Arrays.stream(row.get("crop_id").split(" "))
                        .forEach(id -> claims.computeIfAbsent(id, first -> new ArrayList<>())
                                .add(of(row)));
            }
            return claims;
        }
    }
}
