package warmshelf.crop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import warmshelf.ReferenceTable;

/**
 * Something that is known of a crop's seed or seedlings besides its figures.
 *
 * @param low what the kind says it is; null where the kind has no figure
 * @param high the same, where the kind has a second one
 */
public record SeedTrait(
        Kind kind, @Nullable Double low, @Nullable Double high) {

    /** What is known, with the meaning of its figures. */
    public enum Kind {
        /** A strain was seen to sleep on until it was cooler for a while: degrees Celsius, hours. */
        WAKES_IN_A_COOL_SPELL,
        /** Falls asleep above so many degrees Celsius. */
        SLEEPS_ABOVE,
        /** Less of it comes up above so many degrees Celsius. */
        FEWER_ABOVE,
        /** Comes up best from so many to so many degrees Celsius, cooler than most. */
        COMES_UP_AT,
        /** Kinds without seeds want so many to so many degrees Celsius. */
        SEEDLESS_KINDS_AT,
        /** Nights so many to so many kelvin cooler than days. */
        WANTS_COOLER_NIGHTS,
        /** Bears in its first year after so many days under so many degrees Celsius as a seedling: degrees, days. */
        HEADS_AFTER_CHILL,
        NO_COOL,
        CLUSTERS,
        /** More than 150,000 seeds to the ounce, or 5,000 to the gram: nobody picks one up. Our measure. */
        FINE_AS_DUST,
        SOLD_AS_PELLETS,
        SOLD_NICKED,
        SPLIT_THE_HUSK,
        OWN_CELL,
        /** Its kinds bulb at days of different length, and so suit different latitudes. */
        BULBS_BY_DAY_LENGTH,
        WANTS_FRESH_SEED,
        SLOW,
        FEW_COME_UP;

        static Kind named(String word) {
            return Arrays.stream(values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no trait of seed is called '" + word + "'"));
        }

        /** Its code in the table. */
        String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** The traits of each crop that has any, by its id, in the table's order. */
    static Map<String, List<SeedTrait>> bundled() {
        Map<String, List<SeedTrait>> traits = new LinkedHashMap<>();
        for (CSVRecord row : ReferenceTable.rows("seed-traits.csv")) {
            traits.computeIfAbsent(row.get("crop_id"), id -> new ArrayList<>())
                    .add(new SeedTrait(Kind.named(row.get("trait")), number(row, "low"), number(row, "high")));
        }
        return traits;
    }

    private static @Nullable Double number(CSVRecord row, String column) {
        String cell = row.get(column);
        return cell.isEmpty() ? null : Double.valueOf(cell);
    }
}
