package warmshelf.seed;

import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/**
 * How many seeds to a cell are advised: one row of the table of practice, which is quoted wherever it is said.
 *
 * @param seeds to a cell where there is seed enough; one where it is scarce, and one that has sprouted already
 * @param why in a few words
 */
public record SeedsToACell(int seeds, String why) {
    /** Where seed is scarce, or known to be alive. */
    public static final int FEWEST = 1;

    /** As the bundled table has it; read once, at first use. */
    public static SeedsToACell advised() {
        return Bundled.ADVISED;
    }

    private static SeedsToACell read() {
        CSVRecord row = ReferenceTable.rows("practice.csv").stream()
                .filter(each ->
                        each.get("topic").equals("sowing") && each.get("item").equals("seeds-per-cell"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the table of practice does not tell seeds per cell"));
        return new SeedsToACell(Integer.parseInt(row.get("low")), row.get("note"));
    }

    private static final class Bundled {
        static final SeedsToACell ADVISED = read();
    }
}
