package warmshelf.allocation;

/** Space or temperature forbids a placement; the message is a sentence for the person who tried. */
public final class SpaceClash extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public SpaceClash(String sentence) {
        super(sentence);
    }

    public String sentence() {
        return String.valueOf(getMessage());
    }
}
