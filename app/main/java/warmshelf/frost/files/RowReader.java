package warmshelf.frost.files;

import warmshelf.BadInput;

/** Reads one kind of file line by line. */
interface RowReader {
    /** Whether a document's first line says what its columns are; without that none of it can be read. */
    boolean hasHeading();

    /**
     * Takes a document's first line that is not blank.
     *
     * @throws BadInput when the whole cannot be used
     */
    void begin(long line, String text);

    /**
     * Takes a line after it.
     *
     * @throws BadInput when this line cannot be used; the others may
     */
    void row(long line, String text);

    /** Hands on what could be told only after the last line of the last document. */
    default void end() {}
}
