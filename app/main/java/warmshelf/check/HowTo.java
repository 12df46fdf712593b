package warmshelf.check;

/**
 * What to do at a kind of check, in words that many sowings share: a page says them once and each check leads to them.
 *
 * @param title of the check
 * @param ifSeen what to do when it is seen
 * @param caution the usual caution where the work can hurt someone; empty where none is due
 * @param guide the word of the how-to page that tells more, with sources
 */
public record HowTo(String title, String ifSeen, String caution, String guide) {
    /** Where it stands on a page: the same words have the same key on every page. */
    public String key() {
        return "how-" + Integer.toHexString((title + "\n" + ifSeen + "\n" + caution).hashCode());
    }
}
