package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.List;
import java.util.Map;
import warmshelf.words.FormReader;
import warmshelf.words.Numbers;

/** Reads what was typed of a site. */
public final class SiteForm {
    private SiteForm() {}

    /** What was typed as a draft; to be used only if the reader is ok afterwards. */
    public static SiteDraft read(FormReader reader) {
        String name = reader.requiredText("name", SAY.siteNameField(), 60);
        int walkOrder = reader.wholeNumber("walkOrder", SAY.walkOrderField(), 1, 999);
        double amps = reader.decimal("amps", SAY.ampsField(), 1, 400);
        int volts = reader.wholeNumber("volts", SAY.voltsField(), 100, 250);
        String note = reader.optionalText("note", SAY.noteField(), 400);
        return new SiteDraft(name, walkOrder, new Circuit(amps, volts), note);
    }

    static Map<String, List<String>> typed(Site site) {
        return Map.of(
                "name", List.of(site.name()),
                "walkOrder", List.of(String.valueOf(site.walkOrder())),
                "amps", List.of(Numbers.plain(site.circuit().amps())),
                "volts", List.of(String.valueOf(site.circuit().volts())),
                "note", List.of(site.note()),
                "version", List.of(String.valueOf(site.version())));
    }

    /** A usual household circuit to start from: where Fahrenheit is read, 15 A at 120 V, else 10 A at 230 V. */
    static Map<String, List<String>> blank(int walkOrder, boolean fahrenheit) {
        return Map.of(
                "walkOrder", List.of(String.valueOf(walkOrder)),
                "amps", List.of(fahrenheit ? "15" : "10"),
                "volts", List.of(fahrenheit ? "120" : "230"));
    }
}
