package warmshelf.placing;

/** Somebody else changed a stay after it was looked at; the message is a sentence that says who, what and when. */
public final class Overtaken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Overtaken(String sentence) {
        super(sentence);
    }

    public String sentence() {
        return String.valueOf(getMessage());
    }
}
