package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** What a coordinator types of a crop; temperatures and lengths in the person's units. */
final class CropForm {
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_ID = 40;
    private static final int LONGEST_SOURCE = 200;
    private static final int LONGEST_NOTE = 400;
    private static final int LONGEST_ADDRESS = 400;
    private static final int MOST_WEEKS = 30;
    private static final int MOST_OFFSET = 90;
    private static final int MOST_YEARS = 30;
    private static final double DEEPEST_MM = 150;
    private static final double COLDEST_NIGHT_C = -15;
    private static final double WARMEST_NIGHT_C = 25;
    static final List<String> HARDINESS =
            Arrays.stream(Hardiness.values()).map(Hardiness::words).toList();
    static final List<String> LIGHT = List.of("yes", "no", "indifferent", "unknown");

    private final FormReader reader;
    private final @Nullable Written written;

    /** What was typed, checked. */
    record Written(Crop crop, OwnEmergence emergence) {}

    private CropForm(FormReader reader, @Nullable Written written) {
        this.reader = reader;
        this.written = written;
    }

    /** Nothing typed yet, of a crop that is not in the list. */
    static CropForm blank() {
        return new CropForm(
                new FormReader(Map.of(
                        "emergence",
                        List.of(WarmthForm.STATED),
                        "light",
                        List.of("unknown"),
                        "soak",
                        List.of("unknown"),
                        "maturityBasis",
                        List.of(Crop.Basis.TRANSPLANTING.word()))),
                null);
    }

    /** The figures as the reference has them, to be changed; its note and its source are still to be written. */
    static CropForm showing(Crop reference, int version, Units units) {
        return showing(reference, new OwnEmergence.AsReference(), version, "", "", "", units);
    }

    /** What a coordinator wrote, as it would be typed. */
    static CropForm showing(OwnCrop own, Units units) {
        Crop crop = own.crop();
        return showing(crop, own.emergence(), own.version(), crop.note(), crop.source(), crop.sourceUrl(), units);
    }

    private static CropForm showing(
            Crop crop, OwnEmergence emergence, int version, String note, String source, String sourceUrl, Units units) {
        Map<String, List<String>> typed = new TreeMap<>(MaturityForm.typed(crop.maturity()));
        typed.putAll(WarmthForm.typed(emergence, units));
        typed.put("version", List.of(String.valueOf(version)));
        typed.put("name", List.of(crop.name()));
        typed.put("species", List.of(crop.species()));
        typed.put("hardiness", List.of(crop.hardiness().words()));
        typed.put("weeksMin", List.of(String.valueOf(crop.weeksIndoorsMin())));
        typed.put("weeksMax", List.of(String.valueOf(crop.weeksIndoorsMax())));
        typed.put("offset", List.of(String.valueOf(crop.plantOutOffsetDays())));
        typed.put("offsetLatest", List.of(String.valueOf(crop.plantOutOffsetDaysLatest())));
        putIfKnown(typed, "night", crop.nightMinimumC() == null ? null : units.typedTemperature(crop.nightMinimumC()));
        putIfKnown(typed, "depth", crop.depthMm() == null ? null : units.typedLength(crop.depthMm()));
        typed.put(
                "light",
                List.of(
                        crop.light() == SeedLight.NOT_KNOWN
                                ? "unknown"
                                : crop.light().word()));
        typed.putAll(TreatmentForm.typed(crop));
        putIfKnown(
                typed,
                "seedLife",
                crop.seedLifeYears() == null ? null : crop.seedLifeYears().doubleValue());
        typed.put("note", List.of(note));
        typed.put("source", List.of(source));
        typed.put("sourceUrl", List.of(sourceUrl));
        return new CropForm(new FormReader(typed), null);
    }

    private static void putIfKnown(Map<String, List<String>> typed, String field, @Nullable Double number) {
        if (number != null) {
            typed.put(field, List.of(Numbers.plain(number)));
        }
    }

    /**
     * A form as it was typed.
     *
     * @param id the crop's id; empty for a new one, which gets it from its name
     * @param crops to tell a new crop from those there are
     */
    static CropForm of(Map<String, List<String>> typed, String id, CropCatalogue crops, Units units) {
        FormReader reader = new FormReader(typed);
        Optional<Crop> reference = crops.reference(id);
        String name = reader.requiredText("name", SAY.nameField(), LONGEST_NAME);
        String known = id.isEmpty() ? newId(reader, name, crops) : id;
        Crop crop = crop(reader, known, name, reference, units);
        OwnEmergence emergence = WarmthForm.read(reader, reference.isPresent(), units);
        return new CropForm(reader, reader.ok() ? new Written(crop, emergence) : null);
    }

    private static Crop crop(FormReader reader, String id, String name, Optional<Crop> reference, Units units) {
        String hardiness = reader.choice("hardiness", SAY.howMuchColdField(), HARDINESS);
        int weeksMin = reader.wholeNumber("weeksMin", SAY.weeksAtLeastField(), 0, MOST_WEEKS);
        int weeksMax = reader.wholeNumber("weeksMax", SAY.weeksAtMostField(), 0, MOST_WEEKS);
        inOrder(reader, "weeksMax", SAY.weeksAtMostField(), weeksMin, weeksMax);
        int offset = reader.wholeNumber("offset", SAY.daysAfterFrostField(), -MOST_OFFSET, MOST_OFFSET);
        int offsetLatest =
                reader.wholeNumber("offsetLatest", SAY.daysAfterFrostAtMostField(), -MOST_OFFSET, MOST_OFFSET);
        inOrder(reader, "offsetLatest", SAY.daysAfterFrostAtMostField(), offset, offsetLatest);
        String light = reader.choice("light", SAY.lightToComeUpField(), LIGHT);
        return new Crop(
                id,
                name,
                reader.optionalText("species", SAY.speciesField(), LONGEST_NAME),
                HARDINESS.contains(hardiness) ? Hardiness.named(hardiness) : Hardiness.TENDER,
                weeksMin,
                weeksMax,
                offset,
                offsetLatest,
                night(reader, units),
                depth(reader, units),
                light.equals("unknown") || reader.problems().containsKey("light")
                        ? SeedLight.NOT_KNOWN
                        : SeedLight.named(light),
                reference.map(Crop::raisedFrom).orElse(RaisedFrom.SEED),
                TreatmentForm.read(
                        reader, reference.map(of -> of.treatment().traits()).orElse(List.of())),
                TreatmentForm.ticked(reader),
                MaturityForm.read(reader),
                reference.map(Crop::legalMinimumPercent).orElse(null),
                reader.optionalWholeNumber("seedLife", SAY.yearsSeedKeepsField(), 1, MOST_YEARS)
                        .orElse(null),
                Set.of(),
                reader.optionalText("note", SAY.noteField(), LONGEST_NOTE),
                reader.requiredText("source", SAY.sourceField(), LONGEST_SOURCE),
                address(reader),
                Standing.PUBLISHED);
    }

    private static void inOrder(FormReader reader, String field, String label, int least, int most) {
        if (most < least) {
            reader.refuse(field, SAY.belowTheLeast(label, most, least));
        }
    }

    private static @Nullable Double night(FormReader reader, Units units) {
        OptionalDouble typed = reader.optionalDecimal(
                "night",
                SAY.nightsField(units.degree()),
                units.typedTemperature(COLDEST_NIGHT_C),
                units.typedTemperature(WARMEST_NIGHT_C));
        return typed.isEmpty() ? null : Double.valueOf(units.celsiusOf(typed.getAsDouble()));
    }

    private static @Nullable Double depth(FormReader reader, Units units) {
        OptionalDouble typed = reader.optionalDecimal(
                "depth",
                units.inInches() ? SAY.depthInInchesField() : SAY.depthInCentimetresField(),
                0,
                units.typedLength(DEEPEST_MM));
        return typed.isEmpty() ? null : Double.valueOf(units.millimetresOf(typed.getAsDouble()));
    }

    private static String address(FormReader reader) {
        String address = reader.optionalText("sourceUrl", SAY.addressOfSourceField(), LONGEST_ADDRESS);
        if (!address.isEmpty() && !address.matches("https?://[^\\s/]+\\.[^\\s]+")) {
            reader.refuse("sourceUrl", SAY.addressUnfit(address.substring(0, Math.min(40, address.length()))));
        }
        return address;
    }

    /** The id of a new crop: its name in small plain letters. */
    private static String newId(FormReader reader, String name, CropCatalogue crops) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String id = plain.substring(0, Math.min(LONGEST_ID, plain.length())).replaceAll("-$", "");
        if (id.isEmpty() && !name.isEmpty()) {
            reader.refuse("name", SAY.nameUnfit(name));
        }
        boolean taken = crops.find(id).isPresent()
                || crops.all().stream().anyMatch(crop -> crop.name().equalsIgnoreCase(name));
        if (taken) {
            reader.refuse("name", SAY.nameTaken(name));
        }
        return id;
    }

    /** The version of what was shown when it was typed; 0 where nothing had been written. */
    int version() {
        String typed = reader.text("version");
        return typed.matches("\\d{1,6}") ? Integer.parseInt(typed) : 0;
    }

    /**
     * The same form once more, because somebody else was first; what was typed stays.
     *
     * @param why what that one did
     * @param version the version that stands now
     */
    CropForm overtaken(String why, int version) {
        FormReader again = reader.retyped("version", String.valueOf(version));
        again.refuse("name", why);
        return new CropForm(again, null);
    }

    Optional<Written> written() {
        return Optional.ofNullable(written);
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
