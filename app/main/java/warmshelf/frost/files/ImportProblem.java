package warmshelf.frost.files;

/**
 * A row that was not understood, and why.
 *
 * @param line counted from 1
 */
public record ImportProblem(long line, String sentence) {}
