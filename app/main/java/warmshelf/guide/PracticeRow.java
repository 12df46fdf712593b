package warmshelf.guide;

import java.util.Optional;

/**
 * One row of the table of facts of the trade, as it stands there.
 *
 * @param value a number, a range or words
 * @param unit of the value
 * @param amount the value, where it is a figure or a range
 * @param metricAmount the same in metric units, where the table gives it
 * @param metric the same in metric units; empty where the value needs none
 */
record PracticeRow(
        String topic,
        String item,
        String value,
        String unit,
        String metric,
        Optional<Amount> amount,
        Optional<Amount> metricAmount,
        String note,
        Source source) {
    /** All that the row says, in its own words. */
    String printed() {
        return String.join(" ", item, value, unit, metric, note);
    }
}
