package warmshelf.crop;

/** How much cold a hardened plant bears, in the trade's four classes. */
public enum Hardiness {
    HARDY("hardy"),
    HALF_HARDY("half-hardy"),
    TENDER("tender"),
    VERY_TENDER("very tender");

    private final String words;

    Hardiness(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Tender plants are killed by the first frost. */
    public boolean frostKills() {
        return this == TENDER || this == VERY_TENDER;
    }

    /**
     * The chance of a later frost that is usually accepted for such plants: tender ones die of one late frost, hardened hardy
     * ones take it.
     */
    public double usualRisk() {
        if (frostKills()) {
            return 0.1;
        }
        return this == HALF_HARDY ? 0.3 : 0.5;
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
}
