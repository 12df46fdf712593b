package warmshelf.crop;

/** The two ways the group starts seed. */
public enum Method {
    /** Sown in the cells of a tray. */
    CELLS("cells"),
    /** Pre-sprouted in damp paper in a bag on the mat, then moved into cells. */
    BAG("bag");

    private final String word;

    Method(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The method of that word. */
    public static Method named(String word) {
        for (Method method : values()) {
            if (method.word.equals(word)) {
                return method;
            }
        }
        throw new IllegalArgumentException("a method is 'cells' or 'bag', was '" + word + "'");
    }
}
