package warmshelf.guide;

import java.util.List;

/** Watering from below, and the rot that comes of too much. */
final class WaterArticles {
    private static final String ROT = "damping-off";
    private static final String WATER = "watering";

    private WaterArticles() {}

    static Article watering(Figures figures) {
        return new Article(
                "Water from below leaves seed where it lies and the stems dry, and roots go down after it.",
                List.of(Section.of("")
                        .steps(
                                "Unplug mat and light, or carry the tray to the sink.",
                                "Set the tray into lukewarm water, not so deep that it runs over the rims of the cells.",
                                "Take it out as soon as the surface darkens. That is often a matter of minutes.",
                                "Let it drain until it drips no more, and put it back.",
                                "Water again when the surface turns lighter and the tray feels light, not by the calendar.")
                        .compare(
                                Comparison.told(
                                        "When to take it out",
                                        "The sources agree, in different words.",
                                        "",
                                        figures.told(
                                                "",
                                                WATER,
                                                "from below",
                                                "in tepid water until the surface darkens, then drain"),
                                        figures.told("", WATER, "from below (alt)", "as soon as the top is damp")),
                                Comparison.of(
                                        "Warmth of the water",
                                        "",
                                        "Cold water slows seedlings.",
                                        figures.claim("", ROT, "water temperature")))),
                List.of(Hazard.ELECTRICITY, Hazard.HIGH_SHELF, Hazard.LIFTING),
                List.of(Topic.DAMPING_OFF, Topic.FIRST_FEED));
    }

    static Article dampingOff(Figures figures) {
        return new Article(
                "Stems go thin at the soil and seedlings fall over, often in a spreading patch; sometimes threads or grey fur show."
                        + " Moulds in wet, still, cool compost do it. What has fallen is lost; the rest can be saved.",
                List.of(
                        Section.of("When you see it")
                                .steps(
                                        "Take out what has fallen, with the compost around it, and put it into the bin, not the compost heap.",
                                        "Take the cover off and give air.",
                                        "Water less, from below only, with lukewarm water.",
                                        "Move the tray away from others, wash your hands, and note the loss on Today."),
                        Section.of("So that it does not come")
                                .steps(
                                        "Take new, drained seed compost, moist but not soggy.",
                                        "Clean used pots and trays: wash off the soil, then soak them in 1 part of bleach to 9 parts of"
                                                + " water for 10 to 30 minutes, and rinse.",
                                        "Sow thinly, keep seed warm so that it is soon past its weak days, and take covers off in time.")
                                .compare(
                                        Comparison.told(
                                                "Cleaning pots",
                                                "No second source to compare it with.",
                                                "Never together with acids or other cleaners (common practice).",
                                                figures.told(
                                                        "",
                                                        ROT,
                                                        "cleaning pots",
                                                        "1 part of bleach to 9 parts of water, 10–30 minutes, then rinse")),
                                        Comparison.told(
                                                "Compost",
                                                "No second source to compare it with.",
                                                "",
                                                figures.told(
                                                        "",
                                                        ROT,
                                                        "medium",
                                                        "new seed mix, drained, moist but not soggy")),
                                        Comparison.of(
                                                "Warmth of the compost",
                                                "",
                                                "Seedlings that grow fast are soon past the weak stage.",
                                                figures.claim("on a mat", ROT, "soil warmth")),
                                        Comparison.of(
                                                "Warmth of the water",
                                                "",
                                                "",
                                                figures.claim("", ROT, "water temperature")))),
                List.of(Hazard.MOULD, Hazard.BLEACH, Hazard.COMPOST),
                List.of(Topic.WATERING, Topic.LIGHT));
    }
}
