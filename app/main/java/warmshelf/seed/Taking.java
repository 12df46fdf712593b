package warmshelf.seed;

/** What became of an attempt to take seeds out of a lot. */
public sealed interface Taking {
    /** They were taken; or nobody has counted the lot, and so nothing was written off. */
    record Taken() implements Taking {}

    /** The lot has fewer seeds than that; nothing was taken. */
    record TooFew(int left, int wanted) implements Taking {
        /** For the page. */
        public String sentence() {
            return "The lot has %,d seeds left, and %,d are needed.".formatted(left, wanted);
        }
    }
}
