package warmshelf.leaving;

/**
 * One thing that a member leaves.
 *
 * @param key the sowing's or lot's id, or the site and day of a turn
 * @param words what it is, as a page says it
 * @param address the page of the thing
 */
record LeftThing(LeftKind kind, String key, String words, String address) {
    /** The name of the form field that holds what becomes of it. */
    public String field() {
        return kind.word() + "/" + key;
    }
}
