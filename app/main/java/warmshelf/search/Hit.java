package warmshelf.search;

/**
 * One thing found.
 *
 * @param more that tells it from others of the same title; may be empty
 * @param address of its page
 */
public record Hit(Kind kind, String title, String more, String address) {

    /** What is looked for, in the order in which it is shown. */
    public enum Kind {
        PERSON,
        SOWING,
        LOT,
        PLACE
    }
}
