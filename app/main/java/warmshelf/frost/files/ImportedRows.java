package warmshelf.frost.files;

/** Takes what is found in a file, piece by piece, so that nobody needs to hold all of it. */
public interface ImportedRows {
    void station(StationReading station);

    void place(PostcodeRow place);

    /**
     * A row that cannot be used, or only in part.
     *
     * @param line counted from 1 over all files together
     */
    void problem(long line, String sentence);

    /** Something to know about the whole. */
    void note(String sentence);
}
