package warmshelf.words;

/** Something that a person is told: a type with its figures, worded only when it is known who reads it. */
@FunctionalInterface
public interface Message {

    /** In plain sentences, in a reader's units. */
    String words(Units units);
}
