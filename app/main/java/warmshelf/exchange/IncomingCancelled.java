package warmshelf.exchange;

/** Ends the reading of a file, and so its transaction, because nobody wants it any more. */
final class IncomingCancelled extends RuntimeException {
    private static final long serialVersionUID = 1;

    IncomingCancelled() {
        super("not wanted any more", null, false, false);
    }
}
