package warmshelf.label.paper;

import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/** The usual sizes of sticks, tags, rolls and sheets, by their measures; where each is from stands in its row. */
public final class StockTable {
    private static final List<String> LETTER_COUNTRIES = List.of("US", "CA", "MX", "PH", "CL", "CO");
    private static final String LETTER_SHEET = "letter-30";
    private static final String A4_SHEET = "a4-21";
    private static final List<CSVRecord> ROWS = ReferenceTable.rows("label-stock.csv");
    private static final List<LabelStock> ALL =
            ROWS.stream().map(StockTable::stock).toList();

    private StockTable() {}

    public static List<LabelStock> all() {
        return ALL;
    }

    /** What a row calls itself by. */
    public static Optional<LabelStock> find(String key) {
        return ALL.stream().filter(stock -> stock.key().equals(key)).findFirst();
    }

    /** The sheet of stickers that offices of a country have. */
    public static LabelStock usualIn(String country) {
        return find(isLetter(country) ? LETTER_SHEET : A4_SHEET).orElseThrow();
    }

    /** Whether paper is 8.5 by 11 inches there: the countries that print on Letter, from memory. */
    public static boolean isLetter(String country) {
        return LETTER_COUNTRIES.contains(country);
    }

    /** Those with inches or with millimetres for their measures first. */
    public static List<LabelStock> forCountry(String country) {
        String wanted = isLetter(country) ? "US" : "";
        return ROWS.stream()
                .filter(row ->
                        row.get("units_of").equals(wanted) || row.get("medium").equals(LabelMedium.TAG.word()))
                .map(StockTable::stock)
                .toList();
    }

    private static LabelStock stock(CSVRecord row) {
        return new LabelStock(
                row.get("id"),
                LabelMedium.withWord(row.get("medium")).orElseThrow(),
                row.get("name"),
                number(row, "page_width_mm"),
                number(row, "page_height_mm"),
                number(row, "width_mm"),
                number(row, "height_mm"),
                (int) number(row, "columns"),
                (int) number(row, "rows"),
                number(row, "left_mm"),
                number(row, "top_mm"),
                number(row, "gap_across_mm"),
                number(row, "gap_down_mm"),
                number(row, "point_mm"));
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
