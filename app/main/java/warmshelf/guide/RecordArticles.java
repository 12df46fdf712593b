package warmshelf.guide;

import java.util.List;
import warmshelf.seed.TestWords;

/** What to write down, and what ten seeds tell. */
final class RecordArticles {
    private static final int TRIED = 10;
    private static final int UP = 8;

    private RecordArticles() {}

    static Article labels(Figures figures) {
        return new Article(
                "Seedlings of one kind look alike. A tray without a label is a tray of nobody’s.",
                List.of(Section.of("")
                        .steps(
                                "Write it before you sow, not after.",
                                "Pencil on plastic, or a waterproof marker. Ink runs and felt pens fade.",
                                "Crop, variety, day, whose. The sowing’s short code saves the rest: print it on Codes.",
                                "One label for each tray and each variety, where water does not lift it out.",
                                "Let the label move with the plant: into the cell, the pot and the row.",
                                "Treated seed keeps its own label, which names the substance and carries its caution. It is never swapped"
                                        + " without it.")
                        .compare(Comparison.told(
                                "What belongs on it",
                                "They complete each other.",
                                "The group’s later steps stand in Warmshelf; the label needs only what finds them.",
                                figures.told("", "labels", "what to keep", "variety, day of sowing, each later step"),
                                figures.told(
                                        "",
                                        "labels",
                                        "material",
                                        "pencil on plastic or waterproof marker, one for each tray and variety")))),
                List.of(Hazard.TREATED_SEED, Hazard.POISONOUS),
                List.of(Topic.SOW, Topic.POT_ON));
    }

    static Article seedTest(Figures figures) {
        String warm = figures.fahrenheit(70, 80).words();
        return new Article(
                "Is old seed still good? Ten seeds in damp paper tell roughly, two weeks before it matters.",
                List.of(Section.of("")
                        .steps(
                                "Lay ten or twenty seeds on damp kitchen paper. Do not pick the best.",
                                "Roll it up, put it into a bag with a label, and keep it at %s.".formatted(warm),
                                "Look after two or three days, then daily for one to two weeks. Slow crops take as long as their dates say.",
                                "Count those with a root. Enter the test at the lot, with how many you tried.",
                                "Sow what sprouted, or throw it away; do not put it back into the packet.")
                        .notes("Ten seeds are few. For example, " + TestWords.of(UP, TRIED)
                                + " Test more seeds of a lot that matters.")
                        .compare(Comparison.told(
                                "A home test",
                                "No second source to compare it with.",
                                "The group takes ten where seed is scarce, and says how little ten can tell.",
                                figures.told(
                                        "",
                                        "checks",
                                        "home germination test",
                                        "20 seeds in a moist roll at %s; look after 2–3 days, then daily for 1–2 weeks"
                                                .formatted(warm))))),
                List.of(Hazard.TREATED_SEED, Hazard.HOT_PEPPER, Hazard.MOULD),
                List.of(Topic.SOAK, Topic.SOW));
    }
}
