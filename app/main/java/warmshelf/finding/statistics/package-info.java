/**
 * What a season's counts say, worked out from numbers alone: curves of germination between looks, shares with their intervals,
 * speeds, and comparisons of ways to sprout the same seed. Knows no sowings, pages or records.
 */
@NullMarked
package warmshelf.finding.statistics;

import org.jspecify.annotations.NullMarked;
