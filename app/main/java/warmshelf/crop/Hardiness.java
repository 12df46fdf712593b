package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.List;

/** How much cold a hardened plant bears, in the trade's four classes. */
public enum Hardiness {
    HARDY("hardy", SAY.hardyCrops(), 0.5),
    HALF_HARDY("half-hardy", SAY.halfHardyCrops(), 0.3),
    TENDER("tender", SAY.tenderCrops(), 0.1),
    VERY_TENDER("very tender", SAY.veryTenderCrops(), 0.1);

    private static final List<Hardiness> IN_ORDER = List.of(values());

    private final String words;
    private final String examples;
    private final double usualRisk;

    Hardiness(String words, String examples, double usualRisk) {
        this.words = words;
        this.examples = examples;
        this.usualRisk = usualRisk;
    }

    /** A few crops of the class, for those who do not know its name. */
    public String examples() {
        return examples;
    }

    /**
     * The chance of a later frost that is usually accepted, 0..1: tender plants die of one late frost, hardened hardy ones
     * take it. Common practice.
     */
    public double usualRisk() {
        return usualRisk;
    }

    public String words() {
        return words;
    }

    /** Tender plants are killed by the first frost. */
    public boolean frostKills() {
        return this == TENDER || this == VERY_TENDER;
    }

    /** The class named by a table's words. */
    public static Hardiness named(String words) {
        for (Hardiness hardiness : values()) {
            if (hardiness.words.equals(words)) {
                return hardiness;
            }
        }
        throw new IllegalArgumentException("no hardiness class is called '" + words + "'");
    }

    /** Its place among all, from 0 for the hardiest. */
    public int place() {
        return IN_ORDER.indexOf(this);
    }

    /** The one at a place. */
    public static Hardiness at(int place) {
        return IN_ORDER.get(place);
    }
}
