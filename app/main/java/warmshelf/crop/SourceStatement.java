package warmshelf.crop;

import java.time.LocalDate;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * What one source says of one matter of one crop.
 *
 * @param low of the matter's numbers; null: the source gives no lower end ('4 or less')
 * @param high the same; null: no upper end ('12 or more')
 * @param fromLastFrost the weeks are counted to the last frost, not to planting out
 * @param quote a few words of the source
 * @param publisher who answers for the page: sources of one publisher are not independent
 * @param readOn the day on which it was read for this table
 */
public record SourceStatement(
        String cropId,
        SourceMatter matter,
        @Nullable Double low,
        @Nullable Double high,
        boolean fromLastFrost,
        String quote,
        String title,
        String address,
        String publisher,
        LocalDate readOn) {
    private static final int DAYS_A_WEEK = 7;

    static SourceStatement of(CSVRecord row) {
        SourceMatter matter = SourceMatter.named(row.get("what"));
        return new SourceStatement(
                row.get("crop_id"),
                matter,
                number(row.get("low"), matter),
                number(row.get("high"), matter),
                row.get("unit").equals("weeks-before-last-frost"),
                row.get("quote"),
                row.get("source_title"),
                row.get("source_url"),
                row.get("publisher"),
                LocalDate.parse(row.get("read_on")));
    }

    /** The same counted to planting out, which for a crop may be some days after the last frost. */
    SourceStatement toPlantingOut(Crop crop) {
        double later = fromLastFrost ? (double) crop.plantOutOffsetDays() / DAYS_A_WEEK : 0;
        return new SourceStatement(
                cropId, matter, plus(low, later), plus(high, later), false, quote, title, address, publisher, readOn);
    }

    /** Its lower end, or the only one that it gives. */
    public double least() {
        return low == null ? end(high) : low;
    }

    /** Its upper end, or the only one that it gives. */
    public double most() {
        return high == null ? end(low) : high;
    }

    /** Whether nothing that it allows lies from so much to so much. */
    boolean isOutside(double from, double to) {
        return (low != null && low > to) || (high != null && high < from);
    }

    private double end(@Nullable Double only) {
        if (only == null) {
            throw new IllegalStateException("a source of %s says nothing of %s".formatted(cropId, matter));
        }
        return only;
    }

    private static @Nullable Double plus(@Nullable Double number, double more) {
        return number == null ? null : (Double) (number + more);
    }

    private static @Nullable Double number(String cell, SourceMatter matter) {
        return cell.isEmpty() ? null : (Double) matter.read(cell);
    }
}
