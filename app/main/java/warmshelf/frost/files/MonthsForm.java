package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.MeasuredError;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.station.Side;
import warmshelf.words.FormReader;
import warmshelf.words.TemperatureUnit;
import warmshelf.words.Units;

/** Twelve mean daily minima of a place, typed in the reader's own unit. */
public final class MonthsForm {
    private static final double COLDEST_C = -70;
    private static final double WARMEST_C = 40;
    private static final int LONGEST_SOURCE = 200;
    private static final int ANY_COMMON_YEAR = 2001;

    private final FormReader reader;
    private final @Nullable StationReading station;
    private final String source;

    private MonthsForm(FormReader reader, @Nullable StationReading station, String source) {
        this.reader = reader;
        this.station = station;
        this.source = source;
    }

    static MonthsForm blank() {
        return new MonthsForm(new FormReader(Map.of()), null, "");
    }

    static MonthsForm of(Map<String, List<String>> typed, Units units) {
        FormReader reader = new FormReader(typed);
        String name = reader.requiredText("name", SAY.placeName(), PublishedStations.LONGEST_NAME);
        TypedPlace place = PlaceForm.required(reader, units);
        String source = reader.requiredText("source", SAY.source(), LONGEST_SOURCE);
        double[] means = Arrays.stream(Month.values())
                .mapToDouble(month -> mean(reader, month, units))
                .toArray();
        return new MonthsForm(reader, reader.ok() ? MonthlyStation.of(name, place, means) : null, source);
    }

    private static double mean(FormReader reader, Month month, Units units) {
        String label = SAY.monthIn(name(month), units.degree());
        TemperatureUnit unit = units.temperature();
        return unit.toCelsius(
                reader.decimal(field(month), label, unit.fromCelsius(COLDEST_C), unit.fromCelsius(WARMEST_C)));
    }

    private static String name(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private static String field(Month month) {
        return month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH).toLowerCase(Locale.ROOT);
    }

    /** A month's field and its name. */
    public record MonthField(String field, String name) {}

    public static List<MonthField> months() {
        return Arrays.stream(Month.values())
                .map(month -> new MonthField(field(month), name(month)))
                .toList();
    }

    /**
     * The middle dates that would come of it at one threshold.
     *
     * @param spring null: hardly any spring has one
     */
    public record Preview(
            Threshold threshold,
            @Nullable LocalDate spring,
            @Nullable LocalDate autumn) {}

    /** What would come of it; empty while something cannot be used. */
    public List<Preview> preview() {
        StationReading told = station;
        if (told == null) {
            return List.of();
        }
        List<Preview> previews = new ArrayList<>();
        for (Threshold threshold : Threshold.values()) {
            previews.add(
                    new Preview(threshold, date(told, threshold, Side.SPRING), date(told, threshold, Side.AUTUMN)));
        }
        return previews;
    }

    private static @Nullable LocalDate date(StationReading station, Threshold threshold, Side side) {
        for (FrostDay day : station.days()) {
            Double median = day.medianDay();
            if (day.threshold() == threshold && day.side() == side && median != null) {
                return YearDay.in(ANY_COMMON_YEAR, median);
            }
        }
        return null;
    }

    /** Whether the place lies where the way was measured; empty until it is known where it lies. */
    Optional<Boolean> inUnitedStates() {
        return station().map(place -> MeasuredError.inUnitedStates(place.latitude(), place.longitude()));
    }

    /** Whether it is to be kept now, rather than only shown. */
    boolean isToKeep() {
        return reader.text("do").equals("keep");
    }

    Optional<StationReading> station() {
        return Optional.ofNullable(station);
    }

    String source() {
        return source;
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
