package warmshelf.guide;

import java.util.List;

/** From the cell into the garden. */
final class GrowArticles {
    private static final String POT = "potting on";
    private static final String HARDEN = "hardening off";
    private static final String BY_PENN = "length, Penn State";
    private static final String BY_UTAH = "length, Utah State";

    private GrowArticles() {}

    static Article potOn(Figures figures) {
        return new Article(
                "A cell is small. When roots hold the plug together, or leaves touch the neighbour’s, it wants a pot.",
                List.of(Section.of("")
                        .steps(
                                "Label the pots first.",
                                "Water the cells an hour before, so that the plugs hold.",
                                "Take a pot about twice as wide, with damp compost in it.",
                                "Push the plug up from below. Lift it by the rootball or by a leaf, never by the stem.",
                                "Set it in, fill around it, water it in, and keep it out of hard light for a day.")
                        .compare(Comparison.told(
                                "When to pot on",
                                "No disagreement: the two speak of different crops.",
                                "Melons, squash and cucumbers move early, because they bear a broken root badly.",
                                figures.told(
                                        "melons, squash, cucumbers",
                                        POT,
                                        "cucurbits",
                                        "very small, after the first true leaf"),
                                figures.told(
                                        "tomato and pepper kin, cabbage kin",
                                        POT,
                                        "solanums, brassicas",
                                        "at the first to second true leaf"),
                                figures.told(
                                        "how to lift",
                                        POT,
                                        "handling",
                                        "by the rootball or a leaf, never by the stem")))),
                List.of(Hazard.COMPOST, Hazard.SKIN, Hazard.POISONOUS, Hazard.LIFTING),
                List.of(Topic.LABELS, Topic.FIRST_FEED, Topic.HARDEN_OFF));
    }

    static Article hardenOff(Figures figures) {
        return new Article(
                "Leaves grown indoors burn in sun and wind. They toughen within a week or so when it comes bit by bit.",
                List.of(Section.of("")
                        .steps(
                                "The first day: an hour or two outside, in shade and out of the wind.",
                                "Each day a little longer, and a little more sun.",
                                "Water less often, but then deeply.",
                                "Bring them in for cold nights, and when wind or frost threatens.",
                                "Feed nothing new in this week.")
                        .compare(days(figures), warmth(figures), watering(figures))),
                List.of(Hazard.LIFTING),
                List.of(Topic.PLANT_OUT));
    }

    private static Comparison days(Figures figures) {
        return Comparison.of(
                "How long",
                "",
                "The group’s dates leave ten days for it where they can, and seven at the least, which all of them"
                        + " allow.",
                figures.claim("", HARDEN, "length", Amount.of(3, 14, "days")),
                figures.claim("", HARDEN, BY_PENN),
                figures.claim("", HARDEN, BY_UTAH));
    }

    private static Comparison warmth(Figures figures) {
        String air = figures.fahrenheit(60, 60).words();
        return Comparison.disagreeing(
                "How warm the air should be",
                "from %s by the coolest to %s by the warmest, by crop."
                        .formatted(
                                figures.fahrenheit(50, 50).words(),
                                figures.fahrenheit(65, 65).words()),
                "The group goes by each crop’s coldest night, which its step names.",
                figures.told("warm-season plants", HARDEN, BY_PENN, "only when the air is above " + air),
                figures.told(
                        "pepper and eggplant",
                        HARDEN,
                        BY_UTAH,
                        figures.fahrenheit(60, 65).words() + "; for tomato "
                                + figures.fahrenheit(50, 60).words()));
    }

    private static Comparison watering(Figures figures) {
        return Comparison.told(
                "Water",
                "No second source to compare it with.",
                "",
                figures.told("", HARDEN, "watering", "less often, but more deeply"));
    }

    static Article plantOut(Figures figures) {
        return new Article(
                "The last step is the one that weather can undo. Dates here follow your frost dates; the forecast"
                        + " decides.",
                List.of(Section.of("")
                        .steps(
                                "Read the forecast for ten nights. Wait while nights colder than the crop bears are"
                                        + " forecast.",
                                "Plant in the evening or under cloud.",
                                "Water the plants before and the soil after.",
                                "Set them as deep as they stood; tomatoes deeper if they are leggy.",
                                "Label the row, and keep a cover at hand for a late frost.",
                                "Note it under the sowing: it tells the group which dates worked.")
                        .compare(Comparison.told(
                                "How warm the soil should be",
                                "No second source to compare it with.",
                                "The group goes by your frost dates and each crop’s coldest night.",
                                figures.told(
                                        "warm-season plants",
                                        HARDEN,
                                        BY_PENN,
                                        "about " + figures.fahrenheit(60, 60).words())))),
                List.of(Hazard.LIFTING, Hazard.POISONOUS, Hazard.SKIN),
                List.of(Topic.HARDEN_OFF, Topic.RIPE));
    }

    static Article ripe(Figures figures) {
        return new Article(
                "The day of the first ripe fruit tells the group whether its dates suit.",
                List.of(Section.of("")
                        .steps(
                                "Note the day under the sowing.",
                                "Hot peppers: wear rubber gloves when you cut them or take their seed, and do not"
                                        + " touch your face.",
                                "Seed to keep: from the best plants, fully ripe, dried in an airy shade, labelled with"
                                        + " crop, variety and year.",
                                "Seed of hybrids, and of plants that bees crossed, may come up as something else.",
                                "Put it into the seed box, and what you can spare up for all.")),
                List.of(Hazard.HOT_PEPPER),
                List.of(Topic.LABELS, Topic.SEED_TEST));
    }
}
