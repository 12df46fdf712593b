/**
 * Seedlings to give away: offered by their grower, seen by everyone, taken by a press, handed over and confirmed by either side.
 *
 * <p>{@code SurplusJudge} says how many there are to give and how many are still free; pages and {@code SurplusStore} ask it, and
 * the store holds the sowing's row meanwhile, so that two who take at once never get more than there are.
 */
@NullMarked
package warmshelf.surplus;

import org.jspecify.annotations.NullMarked;
