package warmshelf.frost.intake;

/**
 * A row that was not understood, and why.
 *
 * @param line counted from 1
 */
public record IntakeProblem(long line, String sentence) {}
