package warmshelf.frost.intake;

/** A file so large or so wrong that the whole of it is refused; the message is a sentence for people. */
final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooMuch(String sentence) {
        super(sentence);
    }
}
