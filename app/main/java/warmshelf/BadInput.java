package warmshelf;

/**
 * What a person gave cannot be used. The message is a whole sentence for that person: it names what was given and what is
 * accepted. Commands print it and end with status 2.
 */
public class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BadInput(String sentence) {
        super(sentence);
    }
}
