package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import warmshelf.seed.StorageKind.Conditions;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** The part of a lot's forms that says where the seed is from and how it is kept, with temperatures in the person's units. */
public final class KeepingForm {
    public static final List<Choice> SOURCES = Arrays.stream(SeedSource.values())
            .map(source -> new Choice(source.word(), source.words()))
            .toList();
    static final List<Choice> STORAGES = Arrays.stream(StorageKind.values())
            .map(kind -> new Choice(kind.word(), kind.words()))
            .toList();

    /** Where nobody has measured anything. */
    public static final List<Choice> IN_WORDS = STORAGES.stream()
            .filter(choice -> !choice.value().equals(StorageKind.OWN.word()))
            .toList();

    private KeepingForm() {}

    /** The source; a bought packet where nothing is chosen. */
    public static SeedSource source(FormReader reader) {
        if (reader.text("source").isEmpty()) {
            return SeedSource.PACKET;
        }
        String word = reader.choice("source", SAY.sourceField(), words(SOURCES));
        return reader.problems().containsKey("source") ? SeedSource.PACKET : SeedSource.named(word);
    }

    /** The storage as it is said in words alone; unknown where nothing is chosen. */
    public static Storage storageInWords(FormReader reader) {
        if (reader.text("storage").isEmpty()) {
            return Storage.UNKNOWN;
        }
        String word = reader.choice("storage", SAY.storageField(), words(IN_WORDS));
        return reader.problems().containsKey("storage") ? Storage.UNKNOWN : Storage.of(StorageKind.named(word));
    }

    /** The storage; unknown where nothing is chosen. */
    static Storage storage(FormReader reader, Units units) {
        OptionalDouble celsius = celsius(reader, units);
        OptionalDouble moisture =
                number(reader, "storageMoisture", SAY.moistureField(), Conditions.DRIEST, Conditions.DAMPEST);
        String word = reader.text("storage").isEmpty() ? StorageKind.UNKNOWN.word() : reader.text("storage");
        if (!reader.text("storage").isEmpty()) {
            reader.choice("storage", SAY.storageField(), words(STORAGES));
        }
        boolean own = word.equals(StorageKind.OWN.word());
        if (!own && (isTyped(reader, "storageTemperature") || isTyped(reader, "storageMoisture"))) {
            reader.refuse("storage", SAY.figuresOfOwn(StorageKind.OWN.words()));
        }
        if (own && (celsius.isEmpty() || moisture.isEmpty())) {
            reader.refuse("storageTemperature", SAY.bothFigures());
        }
        if (!reader.ok()) {
            return Storage.UNKNOWN;
        }
        return own
                ? Storage.measured(celsius.orElseThrow(), moisture.orElseThrow())
                : Storage.of(StorageKind.named(word));
    }

    /** What stands on a lot, as it would be typed. */
    static Map<String, List<String>> typed(Lot lot, Units units) {
        Map<String, List<String>> typed = new HashMap<>();
        typed.put("source", List.of(lot.source().word()));
        typed.put("storage", List.of(lot.storage().kind().word()));
        Conditions measured = lot.storage().measured();
        if (measured != null) {
            typed.put("storageTemperature", List.of(Numbers.plain(units.typedTemperature(measured.celsius()))));
            typed.put("storageMoisture", List.of(Numbers.plain(Numbers.tenths(measured.moisturePercent()))));
        }
        return typed;
    }

    private static OptionalDouble celsius(FormReader reader, Units units) {
        if (!units.inFahrenheit()) {
            return number(reader, "storageTemperature", SAY.celsiusField(), Conditions.COLDEST, Conditions.WARMEST);
        }
        OptionalDouble degrees = number(
                reader,
                "storageTemperature",
                SAY.fahrenheitField(),
                (double) units.degrees(Conditions.COLDEST),
                (double) units.degrees(Conditions.WARMEST));
        return degrees.isEmpty() ? degrees : OptionalDouble.of(units.celsiusOf(degrees.getAsDouble()));
    }

    private static OptionalDouble number(FormReader reader, String field, String label, double least, double most) {
        if (!isTyped(reader, field)) {
            return OptionalDouble.empty();
        }
        double number = reader.decimal(field, label, least, most);
        return reader.problems().containsKey(field)
                ? OptionalDouble.empty()
                : OptionalDouble.of(Numbers.tenths(number));
    }

    private static boolean isTyped(FormReader reader, String field) {
        return !reader.text(field).isEmpty();
    }

    private static List<String> words(List<Choice> choices) {
        return choices.stream().map(Choice::value).toList();
    }
}
