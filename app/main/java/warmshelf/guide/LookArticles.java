package warmshelf.guide;

import java.util.List;

/** Looking, and moving what has sprouted. */
final class LookArticles {
    private static final String CHECKS = "checks";
    private static final String SPROUTED = "pre-sprouted";

    private LookArticles() {}

    static Article look(Figures figures) {
        return new Article(
                "Slow seed comes up one by one. Whoever looks every day loses none of it.",
                List.of(
                        Section.of("In a bag")
                                .steps(
                                        "Open the bag over a clean plate.",
                                        "Look for white root tips and count them.",
                                        "Is the paper damp, not wet? Add a few drops, or let it air for an hour.",
                                        "Lift out mouldy seeds with tweezers and throw them away.",
                                        "Move each seed with a root into a cell the same day.",
                                        "Close the bag nearly, lay it back, and note the count on Today."),
                        Section.of("In cells")
                                .steps(
                                        "Look for green loops or leaves and count them.",
                                        "Is the surface moist, not soggy? Water from below when it is not.",
                                        "Take the cover off as the first seedlings come up.",
                                        "Stems thin at the soil, threads or grey fur: see Damping-off.",
                                        "Note the count on Today, also when nothing is there yet."),
                        Section.of("How often, how long, and what counts").compare(often(figures), counts(figures))),
                List.of(Hazard.MOULD, Hazard.ELECTRICITY, Hazard.TREATED_SEED),
                List.of(Topic.MOVE_TO_CELLS, Topic.OFF_HEAT, Topic.DAMPING_OFF));
    }

    private static Comparison often(Figures figures) {
        return Comparison.told(
                "How often",
                "The sources agree: once a day at the least.",
                "The group looks once a day at each site, by rota. Do not give up peppers early: most are up within one to two"
                        + " weeks, very hot kinds within a month or two.",
                figures.told(
                        "peppers in a bag",
                        CHECKS,
                        "pre-sprouted peppers",
                        "daily from about day 7; most within 1–2 weeks, very hot kinds a month or two"),
                figures.told("seed in a bag", CHECKS, "pre-sprouted seed (alt)", "every day"),
                figures.told("seedlings under lights", CHECKS, "seedlings under lights", "once or twice a day"));
    }

    private static Comparison counts(Figures figures) {
        return Comparison.of(
                "Root at which laboratories count a seed as sprouted",
                "",
                "The group counts a root as soon as it shows white.",
                figures.claim("watermelon", SPROUTED, "radicle emergence definition"),
                figures.claim("another laboratory", SPROUTED, "radicle emergence definition (alt)"));
    }

    static Article moveToCells(Figures figures) {
        return new Article(
                "A root that has only just shown moves without harm. A long one breaks, or grows into the paper.",
                List.of(Section.of("")
                        .steps(
                                "Fill the cells with damp compost and label them before you open the bag.",
                                "Make a dip in each cell with a pencil.",
                                "Lift the seed by its coat, with tweezers or a damp brush, never by the root.",
                                "Set it in root down. Grown into the paper? Plant it with the scrap of paper.",
                                "Cover it lightly and water with lukewarm water.",
                                "Put the cells back on the mat or under the light, as Today says, and note how many moved.")
                        .compare(Comparison.told(
                                "How long a root",
                                "They do not contradict each other, but the one published source gives no length.",
                                "The group moves each seed at that length, day by day rather than all at once, because short roots seldom break.",
                                figures.told("", SPROUTED, "when to move", "as the root just shows; no length given"),
                                figures.claim("", SPROUTED, "when to move, length")))),
                List.of(Hazard.TREATED_SEED, Hazard.HOT_PEPPER, Hazard.COMPOST, Hazard.MOULD),
                List.of(Topic.COVERING, Topic.WATERING, Topic.OFF_HEAT));
    }
}
