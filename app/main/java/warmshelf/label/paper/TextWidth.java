package warmshelf.label.paper;

/** How wide letters run. */
@FunctionalInterface
interface TextWidth {
    /** The width of a text in millimetres, in letters whose size (em) is one millimetre. */
    double of(String text, boolean bold);
}
