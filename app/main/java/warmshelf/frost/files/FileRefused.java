package warmshelf.frost.files;

/** A file so large or so wrong that the whole of it is refused; the message is a sentence for people. */
final class FileRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    FileRefused(String sentence) {
        super(sentence);
    }
}
