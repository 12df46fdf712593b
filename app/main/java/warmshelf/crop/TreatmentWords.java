package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.IntFunction;
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
            sentences.add(SAY.coldHelps(weeks(treatment.coldWeeks())));
        }
        if (!treatment.words().isEmpty()) {
            sentences.add(treatment.words());
        }
        return sentences.isEmpty() && treatment.soak() == Soak.NEEDLESS
                ? SAY.noTreatment()
                : String.join(" ", sentences);
    }

    /** What is said of a soak or a file, such as 'A soak of 12 to 24 hours helps.'; empty where nothing is. */
    public static String coat(SeedTreatment treatment) {
        String soak = treatment.hours().equals(Span.UNKNOWN) ? SAY.soak() : SAY.soakOf(hours(treatment.hours()));
        if (treatment.nick()) {
            return treatment.soak().spokenFor() ? SAY.nickOrSoak(soak) : SAY.nick();
        }
        return switch (treatment.soak()) {
            case UNKNOWN, NEEDLESS -> "";
            case OPTIONAL -> SAY.optionalSoak(soak);
            case HELPS -> SAY.helpfulSoak(soak);
            case NEVER -> SAY.noSoak();
        };
    }

    /** For example '12 to 24 hours', 'up to 24 hours', '24 hours'. */
    private static String hours(Span span) {
        return span(span, SAY::hours, SAY::upToHours, SAY::hoursOrMore);
    }

    private static String weeks(Span span) {
        return span(span, SAY::weeks, SAY::upToWeeks, SAY::weeksOrMore);
    }

    private static String span(
            Span span, Function<String, String> both, IntFunction<String> upTo, IntFunction<String> orMore) {
        Integer least = span.least();
        Integer most = span.most();
        if (least != null && most != null) {
            return both.apply(least.equals(most) ? most.toString() : SAY.range(least, most));
        }
        return least == null ? upTo.apply(Objects.requireNonNull(most)) : orMore.apply(least);
    }

    private String trait(SeedTrait trait) {
        return switch (trait.kind()) {
            case WAKES_IN_A_COOL_SPELL -> SAY.wakesInCool(Math.round(high(trait)), units.temperature(low(trait)));
            case SLEEPS_ABOVE -> SAY.sleepsAbove(units.temperature(low(trait)));
            case FEWER_ABOVE -> SAY.fewerAbove(units.temperature(low(trait)));
            case COMES_UP_AT -> SAY.comesUpCool(units.temperatureRange(low(trait), high(trait)));
            case SEEDLESS_KINDS_AT -> SAY.seedlessWant(units.temperatureRange(low(trait), high(trait)));
            case WANTS_COOLER_NIGHTS ->
                SAY.coolerNights(
                        difference(low(trait), high(trait)), units.temperature().sign());
            case HEADS_AFTER_CHILL -> SAY.headsAfterChill(Math.round(high(trait)), units.temperature(low(trait)));
            case NO_COOL -> SAY.noCool();
            case CLUSTERS -> SAY.clusters();
            case FINE_AS_DUST -> SAY.fineAsDust();
            case SOLD_AS_PELLETS -> SAY.soldAsPellets();
            case SOLD_NICKED -> SAY.soldNicked();
            case SPLIT_THE_HUSK -> SAY.splitTheHusk();
            case OWN_CELL -> SAY.ownCell();
            case BULBS_BY_DAY_LENGTH -> SAY.byDayLength();
            case WANTS_FRESH_SEED -> SAY.freshSeed();
            case SLOW -> SAY.slowToComeUp();
            case FEW_COME_UP -> SAY.littleComesUp();
        };
    }

    private String difference(double low, double high) {
        TemperatureUnit unit = units.temperature();
        return SAY.range(
                (int) Math.round(unit.differenceFromCelsius(low)), (int) Math.round(unit.differenceFromCelsius(high)));
    }

    private static double low(SeedTrait trait) {
        return Objects.requireNonNull(trait.low(), trait.kind()::name);
    }

    private static double high(SeedTrait trait) {
        return Objects.requireNonNull(trait.high(), trait.kind()::name);
    }
}
