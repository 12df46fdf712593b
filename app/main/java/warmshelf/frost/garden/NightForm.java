package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Degrees;
import warmshelf.words.FormReader;
import warmshelf.words.MinusSign;
import warmshelf.words.Units;

/** The lowest temperature of one night as it is typed in, on a phone and in the cold. */
public final class NightForm {
    private final FormReader reader;
    private final LocalDate day;
    private final double celsius;
    private boolean doubtful;

    private NightForm(FormReader reader, LocalDate day, double celsius) {
        this.reader = reader;
        this.day = day;
        this.celsius = celsius;
    }

    /** A day's form, with what was noted of it before. */
    static NightForm showing(LocalDate day, @Nullable Night noted, Units units) {
        Map<String, List<String>> fields = new HashMap<>(Map.of("day", List.of(day.toString())));
        if (noted != null) {
            fields.put("temperature", List.of(Degrees.typed(noted.celsius(), units)));
        }
        return new NightForm(new FormReader(fields), day, 0);
    }

    /** A night as it was typed, in those units. */
    public static NightForm of(Map<String, List<String>> typed, LocalDate today, Units units) {
        FormReader reader = new FormReader(MinusSign.ticked(typed, "temperature", "minus"));
        LocalDate day = reader.date("day", SAY.theMorning());
        if (day.isAfter(today)) {
            reader.refuse("day", SAY.morningToCome(day.toString(), today.toString()));
        }
        String unit = units.temperature().scale();
        reader.requiredText("temperature", SAY.theLowest(), 40);
        double figure = reader.decimal(
                "temperature",
                SAY.theLowestIn(unit),
                Degrees.figure(Degrees.LOWEST_C, units),
                Degrees.figure(Degrees.HIGHEST_C, units));
        return new NightForm(reader, day, Degrees.celsius(figure, units));
    }

    /** Asks back once about a doubtful temperature; one that was said to be sure is taken. */
    void askBack(Optional<String> why) {
        if (reader.ok() && why.isPresent()) {
            doubtful = true;
            if (!reader.ticked("sure")) {
                reader.refuse("sure", SAY.sureOfOne(why.get()));
            }
        }
    }

    public boolean ok() {
        return reader.ok();
    }

    public LocalDate day() {
        return day;
    }

    public double celsius() {
        return celsius;
    }

    /** Whether to offer the tick that says one is sure. */
    public boolean isDoubtful() {
        return doubtful;
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
