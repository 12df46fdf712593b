package warmshelf.group;

/** What became of coming in by a link. */
public sealed interface Admission {
    /** In, with a new session's token. */
    record Admitted(String sessionToken) implements Admission {}

    /** Somebody has the name already; the link is still open. */
    record NameTaken() implements Admission {}

    /** Somebody was quicker, or the link has just expired. */
    record LinkSpent() implements Admission {}
}
