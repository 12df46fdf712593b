package warmshelf.words;

/** One choice in a form: what is sent, and the words for it. */
public record Choice(String value, String words) {}
