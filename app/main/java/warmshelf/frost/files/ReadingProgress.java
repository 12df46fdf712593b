package warmshelf.frost.files;

/** Is told how far the reading has come, every few thousand bytes or rows. */
public interface ReadingProgress {
    /**
     * Looks at it.
     *
     * @param bytes of the files as they were sent
     * @param rows lines read
     * @throws ReadingCancelled to end the reading
     */
    void at(long bytes, long rows);
}
