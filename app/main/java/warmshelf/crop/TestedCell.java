package warmshelf.crop;

import java.util.OptionalDouble;

/**
 * One temperature at which a table's trial was run.
 *
 * @param days days to emergence; empty where nothing came up
 * @param share share 0..1 of normal seedlings; empty where it was not recorded
 */
record TestedCell(double celsius, OptionalDouble days, OptionalDouble share) {}
