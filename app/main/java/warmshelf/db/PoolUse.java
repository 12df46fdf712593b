package warmshelf.db;

/**
 * How the connections to the database are used at a moment.
 *
 * @param active at work
 * @param idle open, with nothing to do
 * @param waiting requests that wait for one
 * @param most that are opened at once
 */
public record PoolUse(int active, int idle, int waiting, int most) {}
