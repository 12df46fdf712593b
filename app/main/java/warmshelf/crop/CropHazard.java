package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;
import static warmshelf.crop.Handled.HARVEST;
import static warmshelf.crop.Handled.OUTDOORS;
import static warmshelf.crop.Handled.SEED;
import static warmshelf.crop.Handled.SOWING;
import static warmshelf.crop.Handled.YOUNG_PLANT;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What of a crop can hurt whoever handles it. Cautions hang on these codes and on nothing that is written of the crop. */
public enum CropHazard {
    BURNS("burns", SAY.burns(), SAY.burnsMeaning(), Set.of(SEED, HARVEST)),
    HOT_KINDS("hot-kinds", SAY.hotKinds(), SAY.hotKindsMeaning(), Set.of(SEED, HARVEST)),
    POISONOUS("poisonous", SAY.poisonous(), SAY.poisonousMeaning(), EnumSet.allOf(Handled.class)),
    PARTS("parts", SAY.poisonousParts(), SAY.poisonousPartsMeaning(), Set.of(YOUNG_PLANT, OUTDOORS)),
    SUN("sun", SAY.sapBurns(), SAY.sapBurnsMeaning(), Set.of(OUTDOORS, HARVEST)),
    SENSITISES("sensitises", SAY.sensitises(), SAY.sensitisesMeaning(), Set.of(YOUNG_PLANT, OUTDOORS, HARVEST)),
    IRRITATES("irritates", SAY.irritates(), SAY.irritatesMeaning(), Set.of(YOUNG_PLANT, OUTDOORS, HARVEST)),
    PETS("pets", SAY.harmsPets(), SAY.harmsPetsMeaning(), Set.of(OUTDOORS)),
    GRAZING("grazing", SAY.harmsGrazing(), SAY.harmsGrazingMeaning(), Set.of(OUTDOORS)),
    BITTER("bitter", SAY.bitterFruit(), SAY.bitterFruitMeaning(), Set.of(SOWING, HARVEST)),
    TREATED("treated", SAY.soldTreated(), SAY.soldTreatedMeaning(), Set.of(SEED));

    private final String word;
    private final String title;
    private final String meaning;
    private final Set<Handled> when;

    CropHazard(String word, String title, String meaning, Set<Handled> when) {
        this.word = word;
        this.title = title;
        this.meaning = meaning;
        this.when = when;
    }

    /** Whether somebody meets with it who handles this. */
    public boolean isMetIn(Set<Handled> handled) {
        return when.stream().anyMatch(handled::contains);
    }

    /** Its code in tables and forms. */
    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    /** What is meant, for whoever ticks it. */
    public String meaning() {
        return meaning;
    }

    /**
     * The hazards of codes with spaces between; none for an empty text.
     *
     * @throws IllegalArgumentException for a code that is none of ours
     */
    public static Set<CropHazard> named(String words) {
        Set<CropHazard> found = EnumSet.noneOf(CropHazard.class);
        if (!words.isBlank()) {
            List.of(words.strip().split("\\s+")).forEach(word -> found.add(of(word)));
        }
        return Collections.unmodifiableSet(found);
    }

    /**
     * The hazard of a code.
     *
     * @throws IllegalArgumentException for a code that is none of ours
     */
    static CropHazard of(String word) {
        return Arrays.stream(values())
                .filter(each -> each.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no hazard of a crop has the code '" + word + "'"));
    }

    /** The codes as they are kept, always in one order. */
    public static String words(Set<CropHazard> hazards) {
        return Arrays.stream(values())
                .filter(hazards::contains)
                .map(CropHazard::word)
                .collect(Collectors.joining(" "));
    }
}
