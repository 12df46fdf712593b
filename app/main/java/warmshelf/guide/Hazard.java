package warmshelf.guide;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import warmshelf.crop.CropHazard;

/** What can hurt someone at a step: the usual caution, and the rows of the table of hazards that it rests on. */
public enum Hazard {
    TREATED_SEED("treated-seed"),
    PEROXIDE("peroxide"),
    HOT_PEPPER("hot-pepper"),
    COMPOST("compost-dust"),
    MOULD("mould"),
    ELECTRICITY("electricity"),
    MATS("mats"),
    HIGH_SHELF("high-shelf"),
    LIFTING("lifting"),
    BLEACH("bleach"),
    POISONOUS("poisonous"),
    POISONOUS_PARTS("poisonous-parts"),
    SUN_AND_SAP("sun-and-sap"),
    SKIN("skin"),
    DAISY_FAMILY("daisy-family"),
    PETS("pets"),
    GRAZING("grazing"),
    BITTER_FRUIT("bitter-fruit");

    /** Those of single crops: where a crop is named that has them not, they are left out. */
    private static final Set<Hazard> OF_SOME_CROPS = EnumSet.of(
            HOT_PEPPER, POISONOUS, SKIN, POISONOUS_PARTS, SUN_AND_SAP, DAISY_FAMILY, PETS, GRAZING, BITTER_FRUIT);

    /** Those of them whose name is enough where no crop is named, or the lines would hide the steps. */
    private static final Set<Hazard> NAMED_ONLY =
            EnumSet.of(POISONOUS_PARTS, SUN_AND_SAP, DAISY_FAMILY, PETS, GRAZING, BITTER_FRUIT);

    /**
     * Those that concern skin, eyes, poison or electricity: a line of each stands before the steps. Of the rest the name is enough
     * there.
     */
    private static final Set<Hazard> BEFORE_THE_STEPS =
            EnumSet.complementOf(EnumSet.of(COMPOST, MOULD, HIGH_SHELF, LIFTING));

    private final String name;

    Hazard(String name) {
        this.name = name;
    }

    /** The hazard of that name among the texts. */
    static Hazard named(String name) {
        return Arrays.stream(values())
                .filter(hazard -> hazard.name.equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no hazard is called '" + name + "'"));
    }

    /** The file of the texts that tells of it. */
    String file() {
        return "cautions/" + name;
    }

    private String text(String section) {
        return Advice.fixed(file(), section);
    }

    /** What is dangerous, in a word or a few. */
    public String title() {
        return text("title");
    }

    /** Where its caution stands on a page. */
    public String word() {
        return title().replace(' ', '-');
    }

    public String caution() {
        return text("whole");
    }

    /** In one line, for before the steps; empty where its name is enough there. */
    public String brief() {
        return BEFORE_THE_STEPS.contains(this) ? text("brief") : "";
    }

    boolean isOfSomeCrops() {
        return OF_SOME_CROPS.contains(this);
    }

    /** Whether its name is enough where no crop is named. */
    boolean isNamedOnly() {
        return NAMED_ONLY.contains(this);
    }

    /** The same for a hazard of a crop. */
    static Hazard of(CropHazard hazard) {
        return switch (hazard) {
            case BURNS, HOT_KINDS -> HOT_PEPPER;
            case POISONOUS -> POISONOUS;
            case PARTS -> POISONOUS_PARTS;
            case SUN -> SUN_AND_SAP;
            case SENSITISES -> DAISY_FAMILY;
            case IRRITATES -> SKIN;
            case PETS -> PETS;
            case GRAZING -> GRAZING;
            case BITTER -> BITTER_FRUIT;
            case TREATED -> TREATED_SEED;
        };
    }

    /** What it rests on. */
    List<SafetyRow> rows() {
        return Advice.list(file(), "rests on").stream()
                .map(SafetyTable.bundled()::row)
                .toList();
    }

    /** Whom to believe before us, of those the table names. */
    public String deferTo() {
        return text("believe");
    }

    /** Where it stands, each page once. */
    public List<Source> sources() {
        return rows().stream().map(SafetyRow::source).distinct().toList();
    }
}
