package warmshelf.crop;

/** What a crop is raised from. */
public enum RaisedFrom {
    SEED("seed"),
    SLIPS("slips");

    private final String word;

    RaisedFrom(String word) {
        this.word = word;
    }

    static RaisedFrom named(String word) {
        for (RaisedFrom each : values()) {
            if (each.word.equals(word)) {
                return each;
            }
        }
        throw new IllegalArgumentException("crops are raised from seed or slips, was '" + word + "'");
    }
}
