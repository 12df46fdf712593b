package warmshelf.guide;

import java.util.List;

/** Soaking, with what is known of peroxide and of seed that sleeps. */
final class SoakArticle {
    private static final String SOAK = "pre-soak";
    private static final String PEROXIDE = "peroxide";
    private static final double HOUSEHOLD_PERCENT = 3;

    private SoakArticle() {}

    static Article of(Figures figures) {
        return new Article(
                "A night in water before sowing. It is optional: it softens hard coats and makes seed sprout together,"
                        + " but no crop must have it.",
                List.of(water(figures), peroxide(figures), sleeping(figures)),
                List.of(Hazard.TREATED_SEED, Hazard.PEROXIDE, Hazard.HOT_PEPPER),
                List.of(Topic.SOW, Topic.BOTTOM_HEAT));
    }

    private static Section water(Figures figures) {
        return Section.of("")
                .steps(
                        "Look at the seed and its packet. Is it dyed or marked as treated? Then leave the soak out and"
                                + " sow it dry.",
                        "Label a small cup in pencil: crop, variety, day, whose.",
                        "In the evening cover the seed with lukewarm water.",
                        "Hard coats, such as okra’s: nick each with a file first, away from the scar, or rely on the"
                                + " soak.",
                        "In the morning drain it and sow at once. No seed stays under water longer than a day.")
                .compare(Comparison.told(
                        "How long in water",
                        "The sources do not contradict each other, but nobody measured it: one names no hours, one"
                                + " only the most.",
                        "The group soaks overnight, about 12 hours, because an evening and a morning suit people"
                                + " (common practice).",
                        figures.told(
                                "hard coats, such as okra and some beans",
                                SOAK,
                                "hard-coated seed (okra, some beans)",
                                "nick the coat, or soak in warm water; no hours given. Common practice: 12–24 hours"),
                        figures.told("very hot peppers", SOAK, "habanero-type pepper", "warm water, up to 24 hours")));
    }

    private static Section peroxide(Figures figures) {
        String mix = figures.customary("2 fl oz of it to 2 fl oz of water", "50 ml of it to 50 ml of water");
        return Section.of("Hydrogen peroxide: optional, and doubtful")
                .notes(
                        "Nobody needs it, and the group asks nobody to do it. Many growers use it against mould;"
                                + " whether it helps seed come up is all but unknown. Plain water is the safe choice.",
                        "What speaks against it: undiluted 3 % solution can injure the seedling inside the seed, and"
                                + " in a hobby trial roots were burnt where solution stayed on the paper. That trial also"
                                + " found half and half harmful, which is the very mix that common practice gives five"
                                + " minutes. One part to nine of water is the gentler choice.")
                .steps(
                        "Untreated seed only. Household 3 % solution only, never a stronger grade. Gloves and eye"
                                + " protection.",
                        "Mix it half and half with water, for example %s, or weaker: one part to nine of water."
                                .formatted(mix),
                        "Put the seed in for 5 minutes by the clock, no longer.",
                        "Pour it off and rinse the seed well. Never leave seed or paper wet with it.",
                        "Sow, or go on with a soak in plain water. Pour away what is left; it does not keep once"
                                + " mixed.")
                .compare(peroxideStrengths(figures));
    }

    private static Comparison peroxideStrengths(Figures figures) {
        return Comparison.disagreeing(
                "What is published of peroxide",
                "%s to 1.5 %% peroxide is called best or usual. The evidence is thin: one explainer page without"
                                .formatted(percent(0.7))
                        + " trials, two trials of a hobby grower, one old note on maize. Only about 0.3 % is within"
                        + " both ranges.",
                "Where it is used at all, the group keeps to 5 minutes and a rinse, because strong or long soaks harm.",
                figures.told(
                        "usual mix",
                        PEROXIDE,
                        "common practice soak",
                        "half household 3 % solution, half water (1.5 %), 5 minutes, then rinse; no source"),
                figures.told(
                        "strength to use",
                        PEROXIDE,
                        "working strength",
                        figures.amount(PEROXIDE, "working strength").words()
                                + "; 1 part of 3 % solution to 9 parts of water makes 0.3 %; undiluted 3 % can injure"
                                + " the embryo"),
                figures.told(
                        "peppers, 16 seeds a dose",
                        PEROXIDE,
                        "pepper grower trial",
                        "best with 0.7–10 %% of the 3 %% solution by volume (%s–%s %% peroxide); 50 %% and 100 %% by volume harmed;"
                                        .formatted(percent(0.7), percent(10))
                                + " in water alone mould grew. A hobby trial"),
                figures.told(
                        "maize, poor old seed",
                        PEROXIDE,
                        "maize, poor old seed",
                        "1.5 % for 48 hours: no gain, 1 shoot from 129 seeds; seed that sleeps for want of light came"
                                + " up twice as often"),
                figures.told(
                        "left on paper",
                        PEROXIDE,
                        "root injury",
                        "about 30 %% of the 3 %% solution by volume (%s %% peroxide): roots burnt; soak and rinse only"
                                .formatted(percent(30))));
    }

    /** Peroxide in a mix with so many percent of household solution by volume. */
    private static String percent(double ofVolume) {
        double strength = HOUSEHOLD_PERCENT * ofVolume / 100;
        return Amount.of(strength, strength, "").words();
    }

    private static Section sleeping(Figures figures) {
        String warm = figures.temperature(30);
        return Section.of("Very hot peppers that sleep on")
                .notes(
                        "Worth knowing, not asked for. One strain of a very hot pepper did not come up at all at a steady %s in the dark."
                                        .formatted(warm)
                                + " A cooler spell or light woke it. It was one strain: others may differ, and most"
                                + " seed of very hot peppers only needs patience.",
                        "If yours sleeps on, let it lie in the light, or take it off the mat for a day.")
                .compare(Comparison.told(
                        "What woke seed of very hot peppers",
                        "Each is one trial; nothing repeats them.",
                        "",
                        figures.told(
                                "a cooler spell, or light",
                                SOAK,
                                "habanero-type pepper, light and temperature swing",
                                "24 hours at %s, or 8 hours at %s, amid %s; in the light nearly half came up, in the dark at a steady %s none"
                                        .formatted(figures.temperature(15), figures.temperature(25), warm, warm)),
                        figures.told(
                                "salts and hormones",
                                SOAK,
                                "habanero-type pepper priming",
                                "144 hours in aerated potassium nitrate, or in other research solutions, raised"
                                        + " emergence by 21–36 %. A laboratory treatment, not for home use")));
    }
}
