package warmshelf.frost.minima;

/** Reads one layout of files, line by line. */
interface MinimaLines {
    /** Takes a line that is not blank; its number counts from 1. */
    void read(int number, String line);
}
