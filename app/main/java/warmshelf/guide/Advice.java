package warmshelf.guide;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import warmshelf.seed.TestWords;
import warmshelf.words.Texts;
import warmshelf.words.Units;

/**
 * What the texts of the guide say to one reader. They stand in {@code templates/guide/en}, a file to each article, step and caution, for
 * whoever knows the garden to correct.
 */
public final class Advice {
    private static final Texts TEXTS = new Texts("guide/en");
    private static final int MOST_KEPT = 20_000;
    /** Lines as they were said before: a round asks for the same ones again and again. */
    private static final Map<Line, String> KEPT = new ConcurrentHashMap<>();

    private final Units units;
    private final Figures figures;

    private Advice(Units units) {
        this.units = units;
        this.figures = Figures.in(units);
    }

    public static Advice in(Units units) {
        return new Advice(units);
    }

    /** A section that is the same for every reader, such as a title. */
    public static String fixed(String file, String section) {
        return in(Units.METRIC).say(file, section);
    }

    /** The file that tells of a step. */
    public static String stepFile(String step) {
        return "steps/" + step;
    }

    /** The section for a case, such as 'how in a bag', where the file tells cases apart; else the one for all, such as 'how'. */
    public static String section(String file, String section, String ofCase) {
        String own = section + " " + ofCase;
        return TEXTS.has(file, own) ? own : section;
    }

    public static boolean has(String file, String section) {
        return TEXTS.has(file, section);
    }

    /** The words of a section that lists them with semicolons between; none when there is no such section. */
    public static List<String> list(String file, String section) {
        return TEXTS.has(file, section)
                ? Arrays.stream(fixed(file, section).split(";"))
                        .map(String::strip)
                        .filter(each -> !each.isEmpty())
                        .toList()
                : List.of();
    }

    /** Where a page finds a section, to take it in. */
    static String address(String file, String section) {
        return TEXTS.address(file, section);
    }

    /** What any template may quote: figures by the names of their rows, and parts of what is said of a step. */
    Map<String, Object> forTemplates() {
        return Map.of("figure", figures, "part", new Parts(this, Map.of()));
    }

    /** What the bodies of articles fill in besides. */
    Map<String, Object> forArticles() {
        return Map.of(
                "claim",
                new Claims(figures),
                "compare",
                new Comparisons(),
                "seedTest",
                TestWords.of(whole("home test that sprouted"), whole("home test")));
    }

    private int whole(String item) {
        return (int) figures.amount("checks", item).low();
    }

    /** A section. */
    public String say(String file, String section) {
        return say(file, section, Map.of());
    }

    /**
     * A section that fills in what is known of one sowing.
     *
     * @param values by the names that the section has for them
     */
    public String say(String file, String section, Map<String, ?> values) {
        Line line = new Line(file, section, Map.copyOf(values), units);
        String kept = KEPT.get(line);
        if (kept == null) {
            kept = filledIn(line);
            if (KEPT.size() >= MOST_KEPT) {
                KEPT.clear();
            }
            KEPT.put(line, kept);
        }
        return kept;
    }

    private String filledIn(Line line) {
        // Of the lamps of a shelf a text may ask; most of those who quote it speak of no shelf.
        Map<String, Object> all = new HashMap<>(Map.of("lamp", "", "lampHours", "", "lampTimer", ""));
        all.putAll(line.values());
        all.putAll(forTemplates());
        all.put("part", new Parts(this, line.values()));
        return TEXTS.line(line.file(), line.section(), all);
    }

    private record Line(String file, String section, Map<String, ?> values, Units units) {}
}
