package warmshelf.guide;

import java.util.List;

/** Sowing in cells and in a bag, and how deep. */
final class SowArticles {
    private static final String DEPTH = "covering depth";

    private SowArticles() {}

    static Article sow(Figures figures) {
        return new Article(
                "In cells of seed compost, or in a bag of damp paper first, from which each seed moves into a cell"
                        + " once its root shows.",
                List.of(
                        Section.of("In cells")
                                .steps(
                                        "Write the label first: crop, variety, day, whose.",
                                        "Damp new seed compost until it just holds together. Fill the cells, tap the"
                                                + " tray once, level it.",
                                        "Put %s seeds into each cell, so that few cells stay empty; one where seed is scarce. Snip off the weaker seedling later."
                                                .formatted(figures.amount("sowing", "seeds-per-cell")
                                                        .lowFigure()),
                                        "Cover the seed, or leave it on the surface where it needs light: see Cover"
                                                + " the seed.",
                                        "Water from below with lukewarm water, let it drain, and put the cover on.",
                                        "Stand it on its place on the mat."),
                        Section.of("In a bag")
                                .steps(
                                        "Write on the bag in pencil or waterproof marker: crop, variety, day, whose.",
                                        "Lay kitchen paper flat, wet it, and lift it until no water runs off.",
                                        "Lay the seeds on it, apart from each other, and fold the paper over them.",
                                        "Slide it into the bag and leave that a little open: seed breathes.",
                                        "Lay it flat on the mat. Look into it every day."),
                        measures(figures)),
                List.of(
                        Hazard.TREATED_SEED,
                        Hazard.HOT_PEPPER,
                        Hazard.COMPOST,
                        Hazard.ELECTRICITY,
                        Hazard.LIFTING,
                        Hazard.POISONOUS),
                List.of(Topic.COVERING, Topic.BOTTOM_HEAT, Topic.WATERING, Topic.LABELS, Topic.FIRST_LOOK));
    }

    private static Section measures(Figures figures) {
        ContainerTable trays = figures.containers();
        boolean inches = figures.inches();
        return Section.of("How many, and in what")
                .compare(
                        Comparison.of(
                                "Seeds in a cell",
                                "",
                                "The plan of a sowing takes this too, and one to a cell where a lot has too few; how"
                                        + " many cells, it reckons from the lot’s own tests.",
                                figures.claim("a safety margin", "sowing", "seeds-per-cell")),
                        Comparison.of(
                                "Seeds more than plants wanted",
                                "",
                                "The plan of a sowing reckons this too: weak seed needs far more.",
                                figures.claim("", "sowing", "sow extra")),
                        Comparison.of(
                                "Outside width of a standard tray",
                                ", by maker",
                                "Measure yours: trays of two makers may not nest.",
                                trays.traySide("width", 1, inches),
                                trays.traySide("width", 2, inches),
                                trays.traySide("width", 3, inches)),
                        Comparison.of(
                                "Outside length of a standard tray",
                                ", by maker",
                                "",
                                trays.traySide("length", 1, inches),
                                trays.traySide("length", 2, inches),
                                trays.traySide("length", 3, inches)),
                        Comparison.told(
                                "What cells hold",
                                "One list, from memory; makers differ by a quarter either way.",
                                "To know your own tray, fill one cell with water and measure that.",
                                trays.cells(36, inches),
                                trays.cells(50, inches),
                                trays.cells(72, inches),
                                trays.cells(128, inches)));
    }

    static Article covering(Figures figures) {
        return new Article(
                "Seed wants just enough over it to stay damp. Too deep, and a small seedling is spent before it is up.",
                List.of(Section.of("")
                        .steps(
                                "Look up whether the crop needs light to come up. If so, press the seed onto damp"
                                        + " compost and cover it with no more than a dusting of vermiculite.",
                                "Otherwise cover it with about three times its own thickness. " + example(figures),
                                "Use perlite or vermiculite on top: it stays lighter and drier than compost, so fewer"
                                        + " seedlings rot.",
                                "Firm it gently and water from below, so that the seed stays where it is.")
                        .compare(
                                Comparison.of(
                                        "Depth against the seed’s size",
                                        " or width",
                                        "The group takes three times the thickness, because it is within all of them.",
                                        figures.claim("its diameter", DEPTH, "times seed diameter"),
                                        figures.claim("its width", DEPTH, "times seed width (alt)"),
                                        figures.claim(
                                                "its widest measure; seed that needs light stays on the surface",
                                                DEPTH,
                                                "times widest measure (alt)")),
                                Comparison.of(
                                        "Peppers in cells",
                                        "",
                                        "",
                                        figures.claim("perlite or vermiculite", DEPTH, "peppers in cells")))),
                List.of(Hazard.COMPOST, Hazard.TREATED_SEED, Hazard.HOT_PEPPER),
                List.of(Topic.SOW, Topic.WATERING));
    }

    /** A seed of three millimetres, or an eighth of an inch, with the rules' own multiples. */
    private static String example(Figures figures) {
        double seed = figures.inches() ? 0.125 : 0.3;
        String unit = figures.customary("in", "cm");
        Amount rule = figures.amount(DEPTH, "times seed width (alt)");
        Amount least = figures.amount(DEPTH, "times widest measure (alt)");
        Amount most = figures.amount(DEPTH, "times seed diameter");
        return "For example, a seed %s thick lies %s deep; the rules together allow %s."
                .formatted(
                        Amount.of(seed, seed, unit).words(),
                        Amount.of(seed * rule.low(), seed * rule.low(), unit).words(),
                        Amount.of(seed * least.low(), seed * most.high(), unit).words());
    }
}
