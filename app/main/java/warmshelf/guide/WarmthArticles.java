package warmshelf.guide;

import java.util.List;

/** Warmth from below, and leaving it. */
final class WarmthArticles {
    private static final String HEAT = "bottom heat";
    private static final String NIGHT = "temperature";

    private WarmthArticles() {}

    static Article bottomHeat(Figures figures) {
        return new Article(
                "Seed answers to the warmth of what it lies in, not of the room. The mat’s set-point is the warmth in the compost.",
                List.of(
                        Section.of("")
                                .steps(
                                        "Put the thermostat’s probe into the compost or under the bag, not onto the bare mat.",
                                        "Set it to what suits all that lies there: each crop’s page tells its range, and the mat’s page"
                                                + " the common one.",
                                        "Read the thermometer on the round. Mixes dry out from below on a mat: keep them moist.",
                                        "Keep mats off the timer of the lights. Seed wants its warmth at night too.",
                                        "Crops of the cool season need no mat: leave the room to others.",
                                        "Take each tray off the day most of it is up.")
                                .compare(warmth(figures), peppers(figures), time(figures)),
                        Section.of("What a mat does by itself")
                                .compare(alone(figures), belowTheRoom(figures), watts(figures))),
                List.of(Hazard.ELECTRICITY, Hazard.MATS),
                List.of(Topic.OFF_HEAT, Topic.SOW, Topic.FIRST_LOOK));
    }

    private static Comparison warmth(Figures figures) {
        return Comparison.of(
                "Warmth for seed that likes it warm",
                ", by crop",
                "The group goes by each crop’s own trials, because one figure for all suits few.",
                figures.claim("any seed", HEAT, "general seed set point"),
                figures.claim("warm crops, each its own band", HEAT, "warm crops germination band"),
                figures.claim("tomato, pepper and eggplant alike", HEAT, "tomato, pepper, eggplant optimum"));
    }

    private static Comparison peppers(Figures figures) {
        return Comparison.of(
                "Warmth for peppers",
                "",
                "The group keeps to the lower range: in the trials behind the dates peppers came up as fast at %s as at %s."
                        .formatted(figures.temperature(25), figures.temperature(30)),
                figures.claim("", HEAT, "peppers"),
                figures.claim("pepper and eggplant", HEAT, "warm crops germination band", figures.fahrenheit(80, 90)),
                figures.claim("tomato, pepper and eggplant alike", HEAT, "tomato, pepper, eggplant optimum"));
    }

    private static Comparison time(Figures figures) {
        return Comparison.told(
                "How long on the mat",
                "Not to be compared: the one is of growers’ plugs in a warm chamber, the other of crops that need none.",
                "The group goes by the seedlings: off the day most of them are up.",
                figures.claim("plugs, from sowing; then cooler", HEAT, "time on the mat or in the chamber"),
                figures.told("broccoli, cauliflower, lettuce", HEAT, "cool-season crops", "no mat needed"));
    }

    private static Comparison alone(Figures figures) {
        String above = figures.units().temperature().equals("F") ? "15–20 °F" : "8–11 °C";
        return Comparison.told(
                "A mat without a thermostat",
                "Both figures are of one page, of low authority.",
                "The group uses thermostats, because compost that is too hot kills seed without a sign.",
                figures.claim("surface, in a lived-in room", HEAT, "mat surface, unregulated"),
                figures.containers().told("thermal effect", "compost above the room", above + " warmer"));
    }

    private static Comparison belowTheRoom(Figures figures) {
        return Comparison.of(
                "Damp compost without a mat",
                "",
                "So a warm room alone is cooler for seed than the thermometer on the wall says.",
                figures.claim("colder than the air", HEAT, "medium cooler than air"));
    }

    private static Comparison watts(Figures figures) {
        return Comparison.told(
                "What a mat draws",
                "From memory; mats differ.",
                "The rating plate decides: enter what it says on the mat’s page.",
                figures.containers().told("one flat", "for one tray, 120 V", "17–22 W"),
                figures.containers().told("two flats", "for two trays, 120 V", "40–45 W"),
                figures.containers().told("four flats", "for four trays, 120 V", "100–107 W"),
                figures.containers().told("one 600 x 400 tray", "for one tray, 230 V", "25–40 W"));
    }

    static Article offHeat(Figures figures) {
        return new Article(
                "Seedlings want light, and less warmth than seed. Left on the mat under a cover they grow thin and fall.",
                List.of(Section.of("")
                        .steps(
                                "Take the cover off as soon as the first seedlings are up.",
                                "Take the tray off the mat the day most of it is up.",
                                "Unplug the mat, or dry your hands, before you lift wet trays.",
                                "Put it under the light the same day.",
                                "Note it on Today, so that the place on the mat is free for the next.")
                        .compare(
                                Comparison.of(
                                        "By day, once roots show",
                                        "",
                                        "",
                                        figures.claim("vegetable seedlings", HEAT, "after root emergence")),
                                Comparison.told(
                                        "By night",
                                        "No disagreement: one source, by kind of crop.",
                                        "Nights cooler than days keep seedlings short and sturdy.",
                                        figures.claim("warm-season crops", NIGHT, "night, warm-season seedlings"),
                                        figures.claim("cool-season crops", NIGHT, "night, cool-season seedlings")),
                                Comparison.told(
                                        "When the cover comes off",
                                        "No second source to compare it with.",
                                        "",
                                        figures.told(
                                                "", "humidity dome", "removal", "as seedlings begin to come up")))),
                List.of(Hazard.ELECTRICITY, Hazard.HIGH_SHELF, Hazard.LIFTING),
                List.of(Topic.LIGHT, Topic.DAMPING_OFF));
    }
}
