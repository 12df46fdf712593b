package warmshelf.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import warmshelf.crop.SeedTreatment.Span;
import warmshelf.words.TemperatureUnit;
import warmshelf.words.Units;

/** What a crop's seed wants before sowing, in our sentences and the reader's units. */
public final class TreatmentWords {

    private final Units units;

    public TreatmentWords(Units units) {
        this.units = units;
    }

    /** One sentence after the other; empty where nothing is known. */
    public String of(SeedTreatment treatment) {
        List<String> sentences = new ArrayList<>();
        treatment.traits().forEach(trait -> sentences.add(trait(trait)));
        String coat = coat(treatment);
        if (!coat.isEmpty()) {
            sentences.add(coat);
        }
        if (!treatment.coldWeeks().equals(Span.UNKNOWN)) {
            sentences.add("%s cold and moist before sowing help.".formatted(span(treatment.coldWeeks(), "weeks")));
        }
        if (!treatment.words().isEmpty()) {
            sentences.add(treatment.words());
        }
        return sentences.isEmpty() && treatment.soak() == Soak.NEEDLESS
                ? "No treatment needed."
                : String.join(" ", sentences);
    }

    /** What is said of a soak or a file, such as 'A soak of 12 to 24 hours helps.'; empty where nothing is. */
    public static String coat(SeedTreatment treatment) {
        String hours = treatment.hours().equals(Span.UNKNOWN) ? "" : " of " + span(treatment.hours(), "hours");
        if (treatment.nick()) {
            return treatment.soak().spokenFor()
                    ? "Hard coat: nick it, or give it a soak%s.".formatted(hours)
                    : "Hard coat: nick it.";
        }
        return switch (treatment.soak()) {
            case UNKNOWN, NEEDLESS -> "";
            case OPTIONAL -> "A soak%s is optional.".formatted(hours);
            case HELPS -> "A soak%s helps.".formatted(hours);
            case NEVER -> "No soak.";
        };
    }

    /** For example '12 to 24 hours', 'up to 24 hours', '24 hours'. */
    private static String span(Span span, String of) {
        Integer least = span.least();
        Integer most = span.most();
        if (least == null || most == null) {
            return least == null ? "up to %d %s".formatted(most, of) : "%d %s or more".formatted(least, of);
        }
        return least.equals(most) ? "%d %s".formatted(most, of) : "%d to %d %s".formatted(least, most, of);
    }

    private String trait(SeedTrait trait) {
        return switch (trait.kind()) {
            case WAKES_IN_A_COOL_SPELL ->
                "One strain of it that was tried slept on at a steady warmth until %.0f hours at %s, or light, woke it; others may not."
                        .formatted(high(trait), units.temperature(low(trait)));
            case SLEEPS_ABOVE ->
                "Above about %s it falls asleep instead of coming up: keep it cooler."
                        .formatted(units.temperature(low(trait)));
            case FEWER_ABOVE -> "No mat: above %s less of it comes up.".formatted(units.temperature(low(trait)));
            case COMES_UP_AT -> "Comes up cool, at %s.".formatted(units.temperatureRange(low(trait), high(trait)));
            case SEEDLESS_KINDS_AT ->
                "Kinds without seeds want %s.".formatted(units.temperatureRange(low(trait), high(trait)));
            case WANTS_COOLER_NIGHTS ->
                "Wants diffuse light, and nights %s cooler than days.".formatted(difference(low(trait), high(trait)));
            case HEADS_AFTER_CHILL ->
                "About %.0f days under %s as seedlings bring heads in the first year."
                        .formatted(high(trait), units.temperature(low(trait)));
            case NO_COOL -> "Does not bear the cool.";
            case CLUSTERS -> "Each seed is a cluster and gives several seedlings.";
            case FINE_AS_DUST -> "Fine as dust: leave it on the surface, uncovered, and do not sprout it in a bag.";
            case SOLD_AS_PELLETS -> "It is sold as pellets.";
            case SOLD_NICKED -> "Its coat is nicked before it is sold.";
            case SPLIT_THE_HUSK -> "Split the husk.";
            case OWN_CELL -> "It bears no broken roots: sow it in its own cell.";
            case BULBS_BY_DAY_LENGTH -> "Choose a kind for the length of your days.";
            case WANTS_FRESH_SEED -> "Use fresh seed.";
            case SLOW -> "Slow to come up.";
            case FEW_COME_UP -> "Little of it comes up.";
        };
    }

    private String difference(double low, double high) {
        TemperatureUnit unit = units.temperature();
        return "%d to %d %s"
                .formatted(
                        Math.round(unit.differenceFromCelsius(low)),
                        Math.round(unit.differenceFromCelsius(high)),
                        unit.sign());
    }

    private static double low(SeedTrait trait) {
        return Objects.requireNonNull(trait.low(), trait.kind()::name);
    }

    private static double high(SeedTrait trait) {
        return Objects.requireNonNull(trait.high(), trait.kind()::name);
    }
}
