package warmshelf.frost.files;

/** Ends the reading of a file because nobody wants it any more. It is no fault. */
public final class ReadingCancelled extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public ReadingCancelled() {
        super("the reading was stopped", null, false, false);
    }
}
