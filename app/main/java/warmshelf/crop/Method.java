package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

/** The two ways the group starts seed. */
public enum Method {
    /** Sown in the cells of a tray. */
    CELLS("cells", SAY.inCells()),
    /** Pre-sprouted in damp paper in a bag on the mat, then moved into cells. */
    BAG("bag", SAY.inBag());

    private final String word;
    private final String where;

    Method(String word, String where) {
        this.word = word;
        this.where = where;
    }

    public String word() {
        return word;
    }

    /** Where the seed lies: 'in cells' or 'in a bag'. */
    public String where() {
        return where;
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
