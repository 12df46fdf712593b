package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import warmshelf.crop.Hardiness;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The chances of a later frost that a member accepts, as chosen: one for each hardiness, or as usual. */
public final class RiskForm {
    private static final String AS_USUAL = "usual";
    private static final List<Double> RISKS = List.of(0.5, 0.3, 0.1);

    private final FormReader reader;
    private final Map<Hardiness, Double> risks;

    private RiskForm(FormReader reader, Map<Hardiness, Double> risks) {
        this.reader = reader;
        this.risks = risks;
    }

    static RiskForm showing(Map<Hardiness, Double> accepted) {
        Map<String, List<String>> fields = new HashMap<>();
        for (Hardiness hardiness : Hardiness.values()) {
            Double risk = accepted.get(hardiness);
            fields.put(field(hardiness), List.of(risk == null ? AS_USUAL : String.valueOf(risk)));
        }
        return new RiskForm(new FormReader(fields), accepted);
    }

    static RiskForm of(Map<String, List<String>> typed) {
        FormReader reader = new FormReader(typed);
        Map<Hardiness, Double> risks = new EnumMap<>(Hardiness.class);
        for (Hardiness hardiness : Hardiness.values()) {
            read(reader, hardiness).ifPresent(risk -> risks.put(hardiness, risk));
        }
        return new RiskForm(reader, risks);
    }

    private static Optional<Double> read(FormReader reader, Hardiness hardiness) {
        String text = reader.text(field(hardiness));
        if (text.equals(AS_USUAL)) {
            return Optional.empty();
        }
        Optional<Double> risk =
                RISKS.stream().filter(each -> String.valueOf(each).equals(text)).findFirst();
        if (risk.isEmpty()) {
            reader.refuse(
                    field(hardiness),
                    SAY.noChance(hardiness.words(), text.length() > 20 ? text.substring(0, 20) + "…" : text));
        }
        // what is chosen like the usual one stays the usual one
        return risk.filter(each -> each != hardiness.usualRisk());
    }

    private static String field(Hardiness hardiness) {
        return "risk-" + hardiness.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** One field of the form: its name, its label, a few crops of the class and what may be chosen. */
    public record Line(String field, String label, String examples, List<Choice> choices) {}

    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (Hardiness hardiness : Hardiness.values()) {
            List<Choice> choices = new ArrayList<>();
            choices.add(new Choice(AS_USUAL, SAY.asUsual(words(hardiness.usualRisk()))));
            RISKS.forEach(risk -> choices.add(new Choice(String.valueOf(risk), words(risk))));
            String words = hardiness.words();
            lines.add(new Line(
                    field(hardiness),
                    SAY.plants(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1)),
                    SAY.suchAs(hardiness.examples()),
                    choices));
        }
        return lines;
    }

    private static String words(double risk) {
        int percent = (int) Math.round(100 * risk);
        if (risk == 0.5) {
            return SAY.everyOtherYear(percent);
        }
        return risk == 0.3 ? SAY.threeYearsInTen(percent) : SAY.oneYearInTen(percent);
    }

    boolean ok() {
        return reader.ok();
    }

    Map<Hardiness, Double> risks() {
        return risks;
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
