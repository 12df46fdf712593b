/**
 * What worked here: curves of germination of the group's own sowings, ways compared, and what the season came to. {@code statistics}
 * inside works it out from numbers alone.
 */
@NullMarked
package warmshelf.finding;

import org.jspecify.annotations.NullMarked;
