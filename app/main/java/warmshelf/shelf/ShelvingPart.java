package warmshelf.shelf;

/** What the shelving is made of; each holds the next. */
enum ShelvingPart {
    SITE("site"),
    RACK("rack"),
    SHELF("shelf"),
    MAT("mat");

    private final String word;

    ShelvingPart(String word) {
        this.word = word;
    }

    /** As the audit names it. */
    String word() {
        return word;
    }
}
