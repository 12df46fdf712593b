package warmshelf.photo;

/** What a picture belongs to, with how many each may have. */
enum PhotoSubject {
    /** An entry of what was seen at a sowing; more would say no more. */
    ENTRY("entry", 3),

    /** A lot of seed: the front and the back of its packet. */
    LOT("lot", 2);

    private final String word;
    private final int most;

    PhotoSubject(String word, int most) {
        this.word = word;
        this.most = most;
    }

    /** As the audit line calls it. */
    String word() {
        return word;
    }

    int most() {
        return most;
    }
}
