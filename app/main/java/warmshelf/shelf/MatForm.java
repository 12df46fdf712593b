package warmshelf.shelf;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.web.FormReader;
import warmshelf.words.Units;

/** Reads what was typed of a mat. Temperatures are typed in the visitor's unit and kept in whole °C. */
public final class MatForm {
    // what mats and their thermostats offer, with room to spare
    private static final int LEAST_C = 5;
    private static final int MOST_C = 45;

    private MatForm() {}

    /** What was typed as a draft; to be used only if the reader is ok afterwards. */
    public static MatDraft read(FormReader reader, Units units) {
        String name = reader.requiredText("name", "Name of the mat", 20);
        int walkOrder = reader.wholeNumber("walkOrder", "Walking order", 1, 999);
        int places = reader.wholeNumber("places", "Places", 1, 12);
        int lowC = celsius(reader, "low", "Lowest set-point", units);
        int highC = celsius(reader, "high", "Highest set-point", units);
        int watts = reader.wholeNumber("watts", "Watts", 1, 5000);
        int usualC = celsius(reader, "usual", "Usual set-point", units);
        if (reader.ok()) {
            checkRange(reader, lowC, highC, usualC, units);
        }
        return new MatDraft(name, walkOrder, places, lowC, highC, watts, usualC);
    }

    private static void checkRange(FormReader reader, int lowC, int highC, int usualC, Units units) {
        if (lowC > highC) {
            reader.refuse(
                    "high",
                    "Highest set-point was %s; it must not be below the lowest, %s."
                            .formatted(units.temperature(highC), units.temperature(lowC)));
        } else if (usualC < lowC || usualC > highC) {
            reader.refuse(
                    "usual",
                    "Usual set-point was %s; this thermostat goes from %s."
                            .formatted(units.temperature(usualC), units.temperatureRange(lowC, highC)));
        }
    }

    private static int celsius(FormReader reader, String field, String label, Units units) {
        int typed = reader.wholeNumber(field, label, shown(LEAST_C, units), shown(MOST_C, units));
        return units.wholeCelsiusOf(typed);
    }

    private static int shown(int celsius, Units units) {
        return (int) units.degrees(celsius);
    }

    /** A sentence that begins with what a notice says, and tells which of the temperatures typed were kept as others. */
    static String told(String notice, FormReader reader, Units units) {
        String stepped = Stream.of("low", "high", "usual")
                .map(reader::text)
                .distinct()
                .filter(typed -> typed.matches("[0-9]{1,3}"))
                .map(typed -> units.steppedWords(Integer.parseInt(typed)))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" "));
        return stepped.isEmpty() ? notice : notice + " " + stepped;
    }

    static Map<String, List<String>> typed(Mat mat, Units units) {
        return Map.of(
                "name", List.of(mat.name()),
                "walkOrder", List.of(String.valueOf(mat.walkOrder())),
                "places", List.of(String.valueOf(mat.places().size())),
                "low", List.of(text(mat.lowC(), units)),
                "high", List.of(text(mat.highC(), units)),
                "watts", List.of(String.valueOf(mat.watts())),
                "usual", List.of(text(mat.usualC(), units)),
                "version", List.of(String.valueOf(mat.version())));
    }

    static Map<String, List<String>> blank(int walkOrder) {
        return Map.of("walkOrder", List.of(String.valueOf(walkOrder)));
    }

    private static String text(int celsius, Units units) {
        return String.valueOf(shown(celsius, units));
    }
}
