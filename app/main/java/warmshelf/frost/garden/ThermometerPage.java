package warmshelf.frost.garden;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Visitor;
import warmshelf.words.Degrees;
import warmshelf.words.Units;

/**
 * A thermometer's page.
 *
 * @param noted the night noted for the day of the form; null where there is none
 * @param chart null while no night of the last thirty is noted
 * @param told what all nights say of frost so far
 */
public record ThermometerPage(
        Thermometer thermometer,
        String whose,
        String place,
        boolean mayRetire,
        @Nullable Row noted,
        List<Row> rows,
        @Nullable NightsChart chart,
        List<String> told) {

    static final int NIGHTS_SHOWN = 30;

    /** A night in words. */
    public record Row(LocalDate day, String temperature, String words, String by) {}

    static ThermometerPage of(
            Thermometer thermometer,
            List<Night> nights,
            @Nullable Night noted,
            ThermometerRecord record,
            Visitor visitor) {
        Units units = visitor.units();
        LocalDate today = visitor.today();
        return new ThermometerPage(
                thermometer,
                thermometer.whose(visitor.memberId()),
                Height.words(thermometer.point(), units),
                !thermometer.retired() && thermometer.mayBeRetiredBy(visitor.memberId(), visitor.coordinator()),
                noted == null ? null : row(noted, units),
                nights.stream().map(night -> row(night, units)).toList(),
                nights.isEmpty() ? null : NightsChart.of(nights, today.minusDays(NIGHTS_SHOWN - 1), today, units),
                NightsSummary.of(record, today));
    }

    private static Row row(Night night, Units units) {
        return new Row(night.day(), Degrees.words(night.celsius(), units), NightWords.of(night.celsius()), night.by());
    }
}
