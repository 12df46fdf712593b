/**
 * Side-by-side trials: the same lot sown on the same day in two or three ways, declared beforehand, dealt out by chance, looked at
 * alike, and compared by what {@code finding} works out.
 *
 * <p>{@code TrialForm} and {@code TrialPlanner} judge what may be declared, {@code TrialStore} writes it with the lot held. A trial
 * makes one sowing for each way and block by the way in which all space is asked for; {@code Sowing.trial} names it from then on, on
 * labels, in the round and in every list. {@code TrialReading} tells from the histories of these sowings how far the trial is and
 * what came of it.
 */
@NullMarked
package warmshelf.finding.trial;

import org.jspecify.annotations.NullMarked;
