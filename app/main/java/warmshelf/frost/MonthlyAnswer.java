package warmshelf.frost;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.station.MonthlyFrost;

/** The frost command's answer from twelve monthly mean minima, field by field as documented. */
record MonthlyAnswer(
        String evidence,
        String place,
        double latitude,
        double longitude,
        double elevationM,
        Season spring,
        Season autumn,
        List<Object> stations,
        List<String> notes) {

    /** No seasons were counted, so that their numbers and the extreme dates are null. */
    record Season(
            @Nullable Integer seasons,
            @Nullable Integer seasonsWithFrost,
            double anyFrost,
            @Nullable LocalDate p50,
            @Nullable LocalDate p30,
            @Nullable LocalDate p10,
            @Nullable LocalDate p90,
            @Nullable Double sdDays,
            @Nullable String latest,
            @Nullable String earliest) {}

    static MonthlyAnswer of(double latitude, double longitude, double elevationM, double[] means, int year) {
        MonthlyFrost frost = MonthlyFrost.of(means, latitude < 0);
        return new MonthlyAnswer(
                "monthly-minima",
                String.format(Locale.ROOT, "%.3f, %.3f", latitude, longitude),
                latitude,
                longitude,
                elevationM,
                season(frost.anySpringFrost(), frost::lastSpringFrost, frost.springSd(), year),
                season(frost.anyAutumnFrost(), frost::firstAutumnFrost, frost.autumnSd(), year),
                List.of(),
                notes(latitude, longitude));
    }

    private static Season season(double anyFrost, DoubleFunction<OptionalDouble> dayAt, OptionalDouble sd, int year) {
        return new Season(
                null,
                null,
                Math.round(1000 * anyFrost) / 1000.0,
                date(dayAt.apply(0.5), year),
                date(dayAt.apply(0.3), year),
                date(dayAt.apply(0.1), year),
                date(dayAt.apply(0.9), year),
                sd.isPresent() ? (Double) (Math.round(10 * sd.getAsDouble()) / 10.0) : null,
                null,
                null);
    }

    private static @Nullable LocalDate date(OptionalDouble day, int year) {
        return day.isPresent() ? YearDay.in(year, day.getAsDouble()) : null;
    }

    private static List<String> notes(double latitude, double longitude) {
        List<String> notes = new ArrayList<>();
        notes.add("The dates are worked out from the twelve means alone. "
                + MeasuredError.monthlySentence(MeasuredError.inUnitedStates(latitude, longitude)));
        notes.add("The means decide: they must be those of the garden's own height and position.");
        if (latitude < 0) {
            notes.add("In the southern half the autumn is the one after the spring, so it lies in the next year.");
        }
        return List.copyOf(notes);
    }
}
