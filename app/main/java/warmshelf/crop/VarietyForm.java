package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.words.FormReader;

/** What somebody types of a variety: how soon it bears, and who says so. */
public final class VarietyForm {
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_SOURCE = 200;

    private final FormReader reader;
    private final @Nullable Written written;

    record Written(String name, DaysToMaturity maturity, String source, int version) {}

    private VarietyForm(FormReader reader, @Nullable Written written) {
        this.reader = reader;
        this.written = written;
    }

    /** Nothing known yet of a variety; its name may be. */
    static VarietyForm blank(String name) {
        Map<String, List<String>> typed = new TreeMap<>(MaturityForm.typed(Optional.empty()));
        typed.put("variety", List.of(name));
        typed.put("version", List.of("0"));
        return new VarietyForm(new FormReader(typed), null);
    }

    /** What is known of a variety, as it would be typed. */
    static VarietyForm showing(Variety variety) {
        Map<String, List<String>> typed = new TreeMap<>(MaturityForm.typed(Optional.of(variety.maturity())));
        typed.put("variety", List.of(variety.name()));
        typed.put("varietySource", List.of(variety.source()));
        typed.put("version", List.of(String.valueOf(variety.version())));
        return new VarietyForm(new FormReader(typed), null);
    }

    static VarietyForm of(Map<String, List<String>> typed) {
        FormReader reader = new FormReader(typed);
        String name = reader.requiredText("variety", SAY.varietyField(), LONGEST_NAME);
        Optional<DaysToMaturity> maturity = MaturityForm.read(reader);
        if (maturity.isEmpty()) {
            reader.refuse("maturityMin", SAY.harvestEmpty(MaturityForm.MOST_DAYS));
        }
        String source = reader.requiredText("varietySource", SAY.whoSaysSoField(), LONGEST_SOURCE);
        int version = reader.optionalWholeNumber("version", SAY.versionField(), 0, Integer.MAX_VALUE)
                .orElse(0);
        return new VarietyForm(reader, reader.ok() ? new Written(name, maturity.orElseThrow(), source, version) : null);
    }

    /**
     * The same form once more, because somebody else was first; what was typed stays.
     *
     * @param why what that one did
     * @param version the version that stands now
     */
    VarietyForm overtaken(String why, int version) {
        FormReader again = reader.retyped("version", String.valueOf(version));
        again.refuse("variety", why);
        return new VarietyForm(again, null);
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
