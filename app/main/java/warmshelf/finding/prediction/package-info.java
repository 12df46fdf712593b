/** What the program told beforehand, held against what was seen: emergence, plants, days of planting out, nights of frost. */
@NullMarked
package warmshelf.finding.prediction;

import org.jspecify.annotations.NullMarked;
