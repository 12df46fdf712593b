package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import warmshelf.words.FormReader;

/** Reads what was typed of a shelf. */
public final class ShelfForm {
    /** The field of the tick for a quarantine shelf. */
    static final String QUARANTINE = "quarantine";

    private ShelfForm() {}

    /** What was typed as a draft; to be used only if the reader is ok afterwards. */
    public static ShelfDraft read(FormReader reader) {
        int fromTop = reader.wholeNumber("fromTop", SAY.levelField(), 1, 20);
        int litPlaces = reader.optionalWholeNumber("litPlaces", SAY.litPlacesField(), 0, 12)
                .orElse(0);
        int lightWatts = reader.optionalWholeNumber("lightWatts", SAY.lightWattsField(), 0, 5000)
                .orElse(0);
        if (litPlaces > 0 && lightWatts == 0 && reader.ok()) {
            reader.refuse("lightWatts", SAY.wattsMissing(litPlaces));
        }
        return new ShelfDraft(fromTop, litPlaces, lightWatts, lamp(reader));
    }

    /** Nothing chosen: nobody has said. */
    private static Lamp lamp(FormReader reader) {
        Integer hours = reader.optionalWholeNumber("lampHours", SAY.lampHoursField(), 1, 24)
                .orElse(null);
        String kind = chosen(reader, "lamp", SAY.lampKindField(), List.of("fluorescent", "led", "other"));
        String timer = chosen(reader, "lampTimer", SAY.timerField(), List.of("yes", "no"));
        return new Lamp(Lamp.Kind.named(kind), hours, timer.isEmpty() ? null : Boolean.valueOf(timer.equals("yes")));
    }

    private static String chosen(FormReader reader, String field, String label, List<String> words) {
        if (reader.text(field).isEmpty()) {
            return "";
        }
        String word = reader.choice(field, label, words);
        return reader.problems().containsKey(field) ? "" : word;
    }

    static Map<String, List<String>> typed(Shelf shelf, boolean quarantine) {
        Map<String, List<String>> typed = new HashMap<>();
        typed.put("fromTop", List.of(String.valueOf(shelf.fromTop())));
        typed.put("litPlaces", List.of(String.valueOf(shelf.litPlaces().size())));
        typed.put("lightWatts", List.of(String.valueOf(shelf.lightWatts())));
        typed.put("lamp", List.of(shelf.lamp().kind().word()));
        typed.put("lampHours", List.of(hours(shelf.lamp())));
        typed.put("lampTimer", List.of(timer(shelf.lamp())));
        typed.put("version", List.of(String.valueOf(shelf.version())));
        if (quarantine) {
            typed.put(QUARANTINE, List.of("yes"));
        }
        return typed;
    }

    private static String hours(Lamp lamp) {
        return lamp.hours() == null ? "" : String.valueOf(lamp.hours());
    }

    private static String timer(Lamp lamp) {
        return lamp.timer() == null ? "" : lamp.timer() ? "yes" : "no";
    }

    static Map<String, List<String>> blank(int fromTop) {
        return Map.of(
                "fromTop", List.of(String.valueOf(fromTop)), "litPlaces", List.of("0"), "lightWatts", List.of("0"));
    }
}
