package warmshelf.guide;

import java.util.List;

/** Light: how near, how long, how much. */
final class LightArticle {
    private static final String LIGHT = "light";
    /** A photon flux of one micromole a second gives so many moles in an hour: 3,600 seconds, a million micromoles a mole. */
    private static final double MOLES_AN_HOUR = 0.0036;

    private LightArticle() {}

    static Article of(Figures figures) {
        return new Article(
                "A windowsill in spring is too dark: seedlings lean and grow thin. Under a lamp they stay short.",
                List.of(
                        Section.of("")
                                .steps(
                                        "Hang tubes about %s above the leaves; LED lamps higher, %s, or as their maker says."
                                                .formatted(
                                                        figures.length(100),
                                                        figures.amount(LIGHT, "distance, LED")
                                                                .words()),
                                        "Hold your hand at leaf height: where it feels warm, the lamp is too near. Leaves never touch it.",
                                        "Set the timer to 14 to 16 hours a day. Leave it dark at night.",
                                        "Raise the lamp as they grow, and turn the tray when one end lags.",
                                        "Look once or twice a day: water from below when the surface dries.")
                                .compare(distance(figures), hours(figures), looks(figures), room(figures)),
                        amount(figures)),
                List.of(Hazard.ELECTRICITY, Hazard.MATS, Hazard.HIGH_SHELF),
                List.of(Topic.WATERING, Topic.FIRST_FEED, Topic.DAMPING_OFF));
    }

    private static Comparison distance(Figures figures) {
        return Comparison.of(
                "From lamp to leaves",
                ", by the kind of lamp and by source",
                "The group uses about %s for tubes (common practice), which is within what the first says of them."
                        .formatted(figures.length(100)),
                figures.claim("fluorescent tubes", LIGHT, "distance, fluorescent"),
                figures.claim("LED lamps", LIGHT, "distance, LED"),
                figures.claim("cool white tubes", LIGHT, "distance, cool white fluorescent (alt)"),
                figures.claim("shop-light tubes", LIGHT, "distance, fluorescent shop light (alt)"));
    }

    private static Comparison hours(Figures figures) {
        return Comparison.of(
                "Hours a day",
                "",
                "The group’s timers give 14 to 16. The dark hours matter too.",
                figures.claim("on a timer", LIGHT, "hours"),
                figures.claim("then 8 hours dark", LIGHT, "hours (alt)", Amount.of(16, 16, "hours a day")));
    }

    private static Comparison looks(Figures figures) {
        return Comparison.told(
                "How often to look",
                "No second source to compare it with.",
                "",
                figures.told("seedlings under lights", "checks", "seedlings under lights", "once or twice a day"));
    }

    private static Comparison room(Figures figures) {
        String fixture = figures.customary("4 ft", "122 cm");
        return Comparison.told(
                "Trays under one lamp",
                "No second source to compare it with.",
                "",
                figures.told(
                        "a fixture of %s with two tubes".formatted(fixture),
                        "space",
                        "standard trays under one 4 ft two-tube fixture",
                        "2 standard trays; 4 under two fixtures; 12–18 large or 50–120 small plants to a tray"));
    }

    private static Section amount(Figures figures) {
        return Section.of("For whoever has a light meter")
                .notes(
                        "The light of a whole day is the meter’s reading times the hours times 0.0036. For example %s × %s hours × 0.0036 = %s mol/m² a day."
                                .formatted(
                                        200,
                                        16,
                                        Amount.of(ofDay(200, 16), ofDay(200, 16), "")
                                                .words()))
                .compare(
                        Comparison.of(
                                "Meter’s reading at the leaves",
                                "",
                                "",
                                figures.claim("seedlings", LIGHT, "intensity")),
                        Comparison.of(
                                "Light of a whole day",
                                ", and both are pages of one site of low authority",
                                "The group has no figure of its own: seedlings that stay short have enough.",
                                figures.claim("one page", LIGHT, "daily light integral"),
                                figures.claim(
                                        "another page of that site",
                                        LIGHT,
                                        "daily light integral",
                                        Amount.of(4, 8, "mol/m² a day"))),
                        Comparison.told(
                                "How a day’s light is reckoned",
                                "Arithmetic: an hour has 3,600 seconds, a mole a million micromoles.",
                                "",
                                figures.told(
                                        "",
                                        LIGHT,
                                        "daily light integral concept",
                                        "photons that fall on a square metre in a day")));
    }

    /** Moles of photons on a square metre in a day, to a tenth. */
    static double ofDay(double micromolesASecond, double hours) {
        return Math.round(micromolesASecond * hours * MOLES_AN_HOUR * 10) / 10.0;
    }
}
