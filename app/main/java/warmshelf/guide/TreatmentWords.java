package warmshelf.guide;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What a crop's seed needs before sowing, in plain words and the reader's units; the table's own words are the keys. */
final class TreatmentWords {
    private static final Function<Figures, String> NOTHING = plain("No treatment needed.");
    private static final Function<Figures, String> CELERY =
            figures -> "Wants diffuse light, and nights %s cooler than days. Long cold under %s makes it flower early."
                    .formatted(
                            figures.units().temperature().equals("F") ? "10 to 15 °F" : "6 to 8 °C",
                            degrees(figures, 55));
    private static final Function<Figures, String> LETTUCE = figures ->
            "Above about %s it falls asleep instead of coming up: keep it cooler.".formatted(degrees(figures, 80));

    private static final Map<String, Function<Figures, String>> WORDS = Map.ofEntries(
            Map.entry("none", NOTHING),
            Map.entry("none needed; soak optional", plain("None needed; a soak is optional.")),
            Map.entry(
                    "alternating temperatures (15 C for 24 h or 25 C for 8 h inserted in 30 C) or light broke dormancy in one accession; warm soak up to 24 h",
                    figures ->
                            ("A warm soak of up to 24 hours is optional. In one strain a cooler spell (24 hours at %s, or 8 hours at %s,"
                                            + " amid %s) or light woke seed that slept.")
                                    .formatted(
                                            figures.temperature(15), figures.temperature(25), figures.temperature(30))),
            Map.entry("nick or soak 12-24 h (hard coat)", plain("Hard coat: nick it, or soak it 12 to 24 hours.")),
            Map.entry(
                    "none (seedless types need 85-90 F)",
                    figures -> "None needed; seedless kinds want "
                            + figures.fahrenheit(85, 90).words() + "."),
            Map.entry("raised from slips, not seed", plain("Raised from slips, not from seed.")),
            Map.entry("none; chilled seedlings bolt", plain("None needed. Seedlings that were chilled flower early.")),
            Map.entry("thermo-dormant above about 80 F (27 C)", LETTUCE),
            Map.entry("as head lettuce", LETTUCE),
            Map.entry("none; use fresh seed", plain("None needed, but use fresh seed.")),
            Map.entry("diffuse light and night 10-15 F below day; long cold below 55 F makes it bolt", CELERY),
            Map.entry("as celery", CELERY),
            Map.entry("soak 24 h optional", plain("A soak of 24 hours is optional.")),
            Map.entry("soak optional", plain("A soak is optional.")),
            Map.entry(
                    "seedlings chilled about 10 days below 50 F for first-year heads",
                    figures -> "About 10 days under %s as seedlings bring heads in the first year."
                            .formatted(degrees(figures, 50))),
            Map.entry(
                    "cluster seed; soak optional",
                    plain("Each seed is a cluster and gives several seedlings. A soak is optional.")),
            Map.entry(
                    "no warmth: germination falls above 70 F",
                    figures -> "No mat: above %s less of it comes up.".formatted(degrees(figures, 70))),
            Map.entry(
                    "none; dislikes root disturbance",
                    plain("None needed. It bears no broken roots: sow it in its own cell.")),
            Map.entry(
                    "none; dislikes transplanting",
                    plain("None needed. It dislikes being moved: sow it in its own cell.")),
            Map.entry("soak 12-24 h in warm water; slow", plain("Slow. A soak of 12 to 24 hours in warm water helps.")),
            Map.entry("split the husk or soak", plain("Split the husk, or soak it.")),
            Map.entry("surface sow", plain("Sown on the surface.")),
            Map.entry(
                    "slow, four weeks or more; low germination",
                    plain("Slow: four weeks or more, and little of it comes up.")),
            Map.entry("cold-moist 2-4 weeks helps", plain("Two to four weeks cold and moist before sowing help.")),
            Map.entry("dust-fine seed", plain("Fine as dust: on the surface, and no soak.")),
            Map.entry("pelleted dust seed", plain("Fine as dust and sold as pellets: on the surface, and no soak.")),
            Map.entry(
                    "pelleted dust seed; very slow",
                    plain("Fine as dust and sold as pellets: on the surface, and no soak. Very slow.")),
            Map.entry("germinate in the dark, warm", plain("Comes up in the dark, and warm.")),
            Map.entry("do not grow cool", plain("Does not bear the cool.")),
            Map.entry("plant is poisonous", plain("No treatment needed. The plant is poisonous: gloves and a label.")),
            Map.entry(
                    "poisonous: gloves, label",
                    plain("No treatment needed. The plant is poisonous: gloves and a label.")),
            Map.entry("scarified seed sold", plain("Its coat is nicked before it is sold.")),
            Map.entry(
                    "cool dark germination 65-70 F",
                    figures -> "Comes up cool and dark, at %s."
                            .formatted(figures.fahrenheit(65, 70).words())),
            Map.entry(
                    "soak or nick; dislikes root disturbance",
                    plain("Soak it or nick it. It bears no broken roots: sow it in its own cell.")));

    private TreatmentWords() {}

    /** The words for a treatment of the crops' table; empty for one that is not known here. */
    static Optional<String> of(String treatment, Figures figures) {
        return Optional.ofNullable(WORDS.get(treatment)).map(words -> words.apply(figures));
    }

    private static Function<Figures, String> plain(String words) {
        return figures -> words;
    }

    private static String degrees(Figures figures, double fahrenheit) {
        return figures.fahrenheit(fahrenheit, fahrenheit).words();
    }
}
