package warmshelf.plan.engine.search;

import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.Request;

/**
 * A request as the search sees it: days are numbers from 0, the first day of the plan.
 *
 * @param index its place in the file
 * @param earliest not before the plan's first day
 * @param member index of the member and choice together: only the first stay of such a pair counts for fairness
 * @param rank 0 for the lowest choice number in the file, and so on
 * @param needsLight whether it is not to lie on a dark mat
 * @param light what it needs after the mat; null when nothing, or when the file names no lit shelves
 */
// An array for its speed; no two are ever compared.
@SuppressWarnings("ArrayRecordComponent")
record IndexedRequest(
        int index,
        int quarters,
        StayOption[] ways,
        int earliest,
        int ideal,
        int latest,
        int member,
        int rank,
        boolean needsLight,
        Request.@Nullable Light light) {

    /** The least quarter-days that it can take. */
    int size() {
        return ways.length == 0 ? 0 : quarters * ways[0].days();
    }

    /** The same with no freedom left: one way, from one day. */
    IndexedRequest only(StayOption way, int from) {
        return new IndexedRequest(
                index, quarters, new StayOption[] {way}, from, ideal, from, member, rank, needsLight, light);
    }
}
