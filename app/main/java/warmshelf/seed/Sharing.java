package warmshelf.seed;

/**
 * On what terms others may plan on a lot.
 *
 * @param keptBack seeds that stay whoever asks
 * @param withoutAsking whether others take what they need; else its owner is asked each time
 */
public record Sharing(int keptBack, boolean withoutAsking) {
    /** Nothing is kept back, and the owner is asked. */
    public static final Sharing ASKED = new Sharing(0, false);
}
