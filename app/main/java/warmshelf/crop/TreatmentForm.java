package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import warmshelf.crop.SeedTreatment.Span;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The part of a crop's form that says what of it can hurt someone, and what its seed wants before sowing. */
final class TreatmentForm {
    private static final int LONGEST_WORDS = 200;
    private static final int MOST_HOURS = 24;
    private static final int MOST_WEEKS = 26;
    private static final String UNKNOWN = "unknown";
    private static final String HAZARD = "hazard-";
    static final List<Choice> SOAKS = Arrays.stream(Soak.values())
            .map(soak -> new Choice(typed(soak), soak.words()))
            .toList();

    private TreatmentForm() {}

    /** A hazard to tick, with the name of its field. */
    public record Tick(String field, String title, String meaning) {}

    static List<Tick> hazards() {
        return Arrays.stream(CropHazard.values())
                .map(each -> new Tick(HAZARD + each.word(), each.title(), each.meaning()))
                .toList();
    }

    static Set<CropHazard> ticked(FormReader reader) {
        Set<CropHazard> ticked = EnumSet.noneOf(CropHazard.class);
        for (CropHazard each : CropHazard.values()) {
            if (reader.ticked(HAZARD + each.word())) {
                ticked.add(each);
            }
        }
        return ticked;
    }

    /** @param traits what else the reference knows of that crop; no form asks for it */
    static SeedTreatment read(FormReader reader, List<SeedTrait> traits) {
        return new SeedTreatment(
                soak(reader),
                span(reader, "soakHours", SAY.soakHoursLeastField(), SAY.soakHoursMostField(), MOST_HOURS),
                reader.ticked("nick"),
                span(reader, "coldWeeks", SAY.coldWeeksLeastField(), SAY.coldWeeksMostField(), MOST_WEEKS),
                traits,
                reader.optionalText("treatment", SAY.ownWordsField(), LONGEST_WORDS));
    }

    private static Soak soak(FormReader reader) {
        if (reader.text("soak").isEmpty()) {
            return Soak.UNKNOWN;
        }
        String chosen = reader.choice(
                "soak", SAY.soakField(), SOAKS.stream().map(Choice::value).toList());
        return Soak.find(chosen).orElse(Soak.UNKNOWN);
    }

    private static Span span(FormReader reader, String field, String leastLabel, String mostLabel, int most) {
        Integer least =
                reader.optionalWholeNumber(field + "Min", leastLabel, 1, most).orElse(null);
        Integer longest =
                reader.optionalWholeNumber(field + "Max", mostLabel, 1, most).orElse(null);
        if (least != null && longest != null && longest < least) {
            reader.refuse(field + "Max", SAY.belowTheLeast(mostLabel, longest, least));
        }
        return new Span(least, longest);
    }

    /** What was chosen, as it would be typed. */
    static Map<String, List<String>> typed(Crop crop) {
        SeedTreatment treatment = crop.treatment();
        Map<String, List<String>> typed = new TreeMap<>();
        typed.put("soak", List.of(typed(treatment.soak())));
        put(typed, "soakHours", treatment.hours());
        put(typed, "coldWeeks", treatment.coldWeeks());
        if (treatment.nick()) {
            typed.put("nick", List.of("yes"));
        }
        typed.put("treatment", List.of(treatment.words()));
        crop.hazards().forEach(hazard -> typed.put(HAZARD + hazard.word(), List.of("yes")));
        return typed;
    }

    private static String typed(Soak soak) {
        return soak == Soak.UNKNOWN ? UNKNOWN : soak.word();
    }

    private static void put(Map<String, List<String>> typed, String field, Span span) {
        if (span.least() != null) {
            typed.put(field + "Min", List.of(span.least().toString()));
        }
        if (span.most() != null) {
            typed.put(field + "Max", List.of(span.most().toString()));
        }
    }
}
