package warmshelf.frost.intake;

/** Ends the reading of a file because nobody wants it any more. It is no fault. */
public final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Stopped() {
        super("the reading was stopped", null, false, false);
    }
}
