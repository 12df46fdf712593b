package warmshelf.guide;

import java.util.List;
import warmshelf.crop.Standing;

/** The first feed. */
final class FeedArticle {
    private static final String FEED = "feed";
    /** Milligrams of nitrogen in a litre are parts in a million; a fertiliser marked 20-20-20 is a fifth nitrogen. */
    private static final double NITROGEN_SHARE = 0.20;

    private static final double LITRES_PER_GALLON = 3.78541;

    private FeedArticle() {}

    static Article of(Figures figures) {
        return new Article(
                "Until their first true leaves, seedlings live on the seed. After that they need a little, and weak.",
                List.of(Section.of("")
                        .steps(
                                "Wait for the first true leaves: the pair after the seed leaves.",
                                "Mix liquid feed at half the strength on its label. " + example(figures),
                                "Water with it from below, on damp compost, once a week.",
                                "Pale leaves ask for a little more, dark and soft ones for less.",
                                "Wash your hands afterwards, and keep feed away from children.")
                        .compare(strength(figures), nitrogen(figures), start(figures))),
                List.of(),
                List.of(Topic.WATERING, Topic.POT_ON));
    }

    private static String example(Figures figures) {
        return figures.customary(
                "For example, where the label says 2 teaspoons to a gallon, take 1 teaspoon to a gallon (a quarter"
                        + " strength: ½ teaspoon).",
                "For example, where the label says 10 ml to 1 litre, take 5 ml to 1 litre (a quarter strength: 2.5"
                        + " ml).");
    }

    private static Comparison strength(Figures figures) {
        return Comparison.disagreeing(
                "Share of the label’s strength",
                "a quarter to a half.",
                "The group takes half (common practice). Whoever would rather be careful takes a quarter.",
                figures.told(
                        "mix without soil, once a week",
                        FEED,
                        "strength, soilless mix",
                        "a quarter of the label’s strength"),
                common("from the first true leaves", "half of the label’s strength"));
    }

    private static Comparison nitrogen(Figures figures) {
        double gramsALitre = figures.amount(FEED, "strength, nitrogen basis").low() / 1000 / NITROGEN_SHARE;
        double grams = figures.inches() ? gramsALitre * LITRES_PER_GALLON : gramsALitre;
        return Comparison.told(
                "Strength by its nitrogen",
                "No second source to compare it with.",
                "",
                figures.told(
                        "fertiliser marked 20-20-20, once or twice a week",
                        FEED,
                        "strength, nitrogen basis",
                        "100 ppm of nitrogen, which is %s g of the powder to %s (reckoned)"
                                .formatted(
                                        Amount.of(tenth(grams), tenth(grams), "")
                                                .words(),
                                        figures.customary("a gallon", "a litre"))));
    }

    private static double tenth(double grams) {
        return Math.round(grams * 10) / 10.0;
    }

    private static Comparison start(Figures figures) {
        return Comparison.disagreeing(
                "When to begin",
                "from the first true leaves, or only after several.",
                "The group begins with the first true leaves, because its feed is weak.",
                figures.told("", FEED, "start", "after several true leaves; no feed before"),
                common("", "at the first true leaves"));
    }

    /** What growers do and no row of the table tells. */
    private static Claim common(String of, String says) {
        return new Claim(
                of, says, null, says, Source.of(Standing.COMMON_PRACTICE.word(), "", Standing.COMMON_PRACTICE));
    }
}
