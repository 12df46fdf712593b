package warmshelf.crop;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * How a crop is usually sown whose roots bear no moving ({@code db/reference/usual-sowing.csv}).
 *
 * @param soilC the soil temperature from which its seed comes up well outdoors, in degrees Celsius: the least that an extension
 *     service gives ({@code soil-temperature-range.csv}); empty where none does
 */
public record UsualSowing(Place place, OptionalDouble soilC, String source, String sourceUrl, Standing standing) {
    private static final Map<String, UsualSowing> BUNDLED = ReferenceTable.rows("usual-sowing.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get("crop_id"), UsualSowing::of));

    /** Where it is usually sown. */
    public enum Place {
        /** Outdoors, for good. */
        WHERE_IT_GROWS("where-it-grows"),
        /** In a pot that is planted with it. */
        POT_THAT_ROTS("pot-that-rots");

        private final String word;

        Place(String word) {
            this.word = word;
        }

        /** Its code in tables and commands. */
        public String word() {
            return word;
        }

        private static Place named(String word) {
            return Arrays.stream(values())
                    .filter(each -> each.word.equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("nothing is usually sown '" + word + "'"));
        }
    }

    /** Empty for a crop whose roots may be moved, or of which nobody says. */
    public static Optional<UsualSowing> of(Crop crop) {
        return Optional.ofNullable(BUNDLED.get(crop.id()));
    }

    private static UsualSowing of(CSVRecord row) {
        return new UsualSowing(
                Place.named(row.get("place")),
                soil(row.get("soil_row")),
                row.get("source_title"),
                row.get("source_url"),
                Standing.named(row.get("standing")));
    }

    private static OptionalDouble soil(String vegetable) {
        return ReferenceTable.rows("soil-temperature-range.csv").stream()
                .filter(row -> row.get("crop").equals(vegetable))
                .map(row -> row.get("opt_low_c"))
                .filter(cell -> !cell.isEmpty())
                .mapToDouble(Double::parseDouble)
                .min();
    }
}
