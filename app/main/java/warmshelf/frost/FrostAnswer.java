package warmshelf.frost;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Numbers;

/**
 * The frost command's answer, field by field as documented, whatever the dates rest on. What every answer has is null
 * where it cannot be given; what only one kind of evidence can tell is left out of the others.
 *
 * @param thresholdC at or below which a minimum counts as frost; of daily minima only
 * @param surface of the bundled surface only
 */
record FrostAnswer(
        String evidence,
        String place,
        @Nullable Double latitude,
        @Nullable Double longitude,
        @Nullable Double elevationM,
        @JsonInclude(Include.NON_NULL) @Nullable Double thresholdC,
        Season spring,
        Season autumn,
        List<Station> stations,
        @JsonInclude(Include.NON_NULL) @Nullable Surface surface,
        List<String> notes) {

    /**
     * One side of the year.
     *
     * @param seasons how many were counted; null where none were
     * @param anyFrost share of seasons with any frost
     * @param doubt of the surface and of stations only
     * @param height of the surface only
     * @param counted of daily minima only
     */
    record Season(
            @Nullable Integer seasons,
            @Nullable Integer seasonsWithFrost,
            @Nullable Double anyFrost,
            @JsonUnwrapped Dates dates,
            @Nullable Double sdDays,
            @Nullable String latest,
            @Nullable String earliest,
            @JsonUnwrapped @Nullable Doubt doubt,
            @JsonUnwrapped @Nullable Height height,
            @JsonUnwrapped @Nullable Counted counted) {

        /** One of which no seasons were counted. */
        static Season estimated(
                double anyFrost, Dates dates, OptionalDouble sdDays, @Nullable Doubt doubt, @Nullable Height height) {
            return new Season(
                    null, null, thousandths(anyFrost), dates, tenths(sdDays), null, null, doubt, height, null);
        }
    }

    /** The days of four risks. */
    record Dates(
            @Nullable LocalDate p50,
            @Nullable LocalDate p30,
            @Nullable LocalDate p10,
            @Nullable LocalDate p90) {

        /** @param dayAt the day of a 365-day year at a risk */
        static Dates of(DoubleFunction<OptionalDouble> dayAt, int year) {
            return new Dates(
                    date(dayAt.apply(0.5), year),
                    date(dayAt.apply(0.3), year),
                    date(dayAt.apply(0.1), year),
                    date(dayAt.apply(0.9), year));
        }
    }

    /** What the standard deviation is made of. */
    record Doubt(double yearSdDays, double stationScatterDays, double elevationSdDays) {}

    /** What the height of the place does to the dates. */
    record Height(double adjustmentDays, double daysPer100M) {}

    /** What a record is worth; {@code method} says whether p50 to p90 are {@code counted} or {@code fitted}. */
    record Counted(
            int leftOut,
            String method,
            Dates counted,
            Dates fitted,
            @Nullable Double p50WithinDays,
            @Nullable Double p10WithinDays,
            @Nullable Drift trend) {}

    record Drift(
            int firstYear,
            int lastYear,
            double daysPerDecade,
            double chance,
            boolean clear,
            @Nullable LocalDate p10AtItsEnd,
            String words) {}

    record Station(
            String name, double distanceKm, double elevationM, double weight, double adjustmentDays, String source) {}

    record Surface(
            List<String> cells,
            double referenceElevationM,
            double elevationSdM,
            double nearestStationKm,
            double freezeRareShare) {}

    static @Nullable LocalDate date(OptionalDouble day, int year) {
        return day.isPresent() ? YearDay.in(year, day.getAsDouble()) : null;
    }

    static double tenths(double value) {
        return Numbers.tenths(value);
    }

    static @Nullable Double tenths(OptionalDouble value) {
        return value.isPresent() ? (Double) tenths(value.getAsDouble()) : null;
    }

    static double thousandths(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
