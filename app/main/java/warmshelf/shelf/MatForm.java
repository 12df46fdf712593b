package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads what was typed of a mat. Temperatures are typed in whole degrees of the visitor's unit. */
public final class MatForm {
    // what mats and their thermostats offer, with room to spare
    private static final int LEAST_C = 5;
    private static final int MOST_C = 45;

    /** Colder than any mat: no temperature that is typed is shown as this one. */
    private static final double NOTHING = -99;

    private MatForm() {}

    /** What was typed of a new mat as a draft; to be used only if the reader is ok afterwards. */
    public static MatDraft read(FormReader reader, Units units) {
        return read(reader, units, NOTHING, NOTHING, NOTHING);
    }

    /** What was typed of a mat that stands; a temperature that was left as it was shown stays what it is. */
    static MatDraft read(FormReader reader, Units units, Mat mat) {
        return read(reader, units, mat.lowC(), mat.highC(), mat.usualC());
    }

    private static MatDraft read(FormReader reader, Units units, double lowBefore, double highBefore, double before) {
        String name = reader.requiredText("name", SAY.matNameField(), 20);
        int walkOrder = reader.wholeNumber("walkOrder", SAY.walkOrderField(), 1, 999);
        return measures(reader, units, lowBefore, highBefore, before).named(name, walkOrder);
    }

    /** The same of mats that are alike and get their names later. */
    static MatDraft readNameless(FormReader reader, Units units) {
        return measures(reader, units, NOTHING, NOTHING, NOTHING);
    }

    private static MatDraft measures(
            FormReader reader, Units units, double lowBefore, double highBefore, double before) {
        int places = reader.wholeNumber("places", SAY.placesField(), 1, 12);
        double lowC = celsius(reader, "low", SAY.lowestField(), units, lowBefore);
        double highC = celsius(reader, "high", SAY.highestField(), units, highBefore);
        int watts = reader.wholeNumber("watts", SAY.wattsField(), 1, 5000);
        double usualC = celsius(reader, "usual", SAY.usualField(), units, before);
        LightAbove light = light(reader);
        if (reader.ok()) {
            checkRange(reader, lowC, highC, usualC, units);
        }
        return new MatDraft("", 1, places, lowC, highC, watts, usualC, light);
    }

    /** Nothing chosen: nobody has said. */
    private static LightAbove light(FormReader reader) {
        if (reader.text("light").isEmpty()) {
            return LightAbove.NOT_KNOWN;
        }
        String word = reader.choice(
                "light",
                SAY.lightAboveField(),
                Arrays.stream(LightAbove.values()).map(LightAbove::word).toList());
        return reader.problems().containsKey("light") ? LightAbove.NOT_KNOWN : LightAbove.named(word);
    }

    private static void checkRange(FormReader reader, double lowC, double highC, double usualC, Units units) {
        if (lowC > highC) {
            reader.refuse("high", SAY.highestBelowLowest(units.temperature(highC), units.temperature(lowC)));
        } else if (!new Thermostat(lowC, highC).contains(usualC)) {
            reader.refuse("usual", SAY.usualBeyond(units.temperature(usualC), units.temperatureRange(lowC, highC)));
        }
    }

    private static double celsius(FormReader reader, String field, String label, Units units, double before) {
        int typed = reader.wholeNumber(field, label, shown(LEAST_C, units), shown(MOST_C, units));
        return units.celsiusOf(typed, before);
    }

    private static int shown(double celsius, Units units) {
        return (int) units.degrees(celsius);
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
                "light", List.of(mat.light().word()),
                "version", List.of(String.valueOf(mat.version())));
    }

    /** What two mats of one kind have alike. */
    static Map<String, List<String>> alike(Mat mat, Units units) {
        Map<String, List<String>> typed = new HashMap<>(typed(mat, units));
        typed.keySet().removeAll(List.of("name", "walkOrder", "version"));
        return typed;
    }

    static Map<String, List<String>> blank(int walkOrder) {
        return Map.of("walkOrder", List.of(String.valueOf(walkOrder)));
    }

    private static String text(double celsius, Units units) {
        return String.valueOf(shown(celsius, units));
    }
}
