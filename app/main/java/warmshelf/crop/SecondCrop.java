package warmshelf.crop;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/** When a crop is grown besides from spring on: for autumn, over winter, and again and again. */
public final class SecondCrop {
    private static final int DAYS_OF_A_WEEK = 7;
    private static final Set<String> AUTUMN = new HashSet<>();
    private static final Map<String, Span> OVER_WINTER =
            spans("overwintering.csv", "weeks_before_frost", DAYS_OF_A_WEEK);
    private static final Map<String, Span> AGAIN = spans("sow-again.csv", "days", 1);

    private static final Map<String, Integer> AUTUMN_GROWTH = new HashMap<>();

    static {
        ReferenceTable.rows("autumn-growth.csv")
                .forEach(row -> AUTUMN_GROWTH.put(row.get("item"), Integer.valueOf(row.get("days"))));
        ReferenceTable.rows("autumn-crops.csv").forEach(row -> AUTUMN.add(row.get("crop_id")));
    }

    private SecondCrop() {}

    /** From so many to so many days. */
    public record Span(int least, int most) {}

    /** Days by which a harvest in autumn comes later than the same kind's in spring and summer, by {@code autumn-growth.csv}. */
    public static int slowerInAutumn() {
        return Objects.requireNonNull(AUTUMN_GROWTH.get("slower"));
    }

    /** Whether it is grown for autumn, by {@code autumn-crops.csv}, and its days are known, so that they can be counted back. */
    public static boolean isForAutumn(Crop crop) {
        return AUTUMN.contains(crop.id()) && crop.maturity().isPresent();
    }

    /** Days before the first autumn frost to plant it out and leave it over winter; empty where no source gives them. */
    public static Optional<Span> overWinter(Crop crop) {
        return Optional.ofNullable(OVER_WINTER.get(crop.id()));
    }

    /** Days from one sowing to the next for a harvest that goes on; empty where no source gives them. */
    public static Optional<Span> again(Crop crop) {
        return Optional.ofNullable(AGAIN.get(crop.id()));
    }

    private static Map<String, Span> spans(String file, String column, int each) {
        Map<String, Span> spans = new HashMap<>();
        for (CSVRecord row : ReferenceTable.rows(file)) {
            spans.put(
                    row.get("crop_id"),
                    new Span(
                            Integer.parseInt(row.get(column + "_min")) * each,
                            Integer.parseInt(row.get(column + "_max")) * each));
        }
        return spans;
    }
}
