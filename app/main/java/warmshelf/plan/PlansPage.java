package warmshelf.plan;

import java.util.List;
import java.util.Set;
import warmshelf.words.FormReader;

/**
 * The plans so far, and the form that begins another.
 *
 * @param running whether one is being worked on
 * @param waiting how many requests wait for a place
 * @param mats how many mats there are to plan for
 * @param lit whether there are places under a light
 * @param movable published stays on mats that may be ticked to be moved, because they have not begun
 * @param ticked the ids of those that are
 */
record PlansPage(
        List<KeptPlan> plans,
        boolean running,
        int waiting,
        int mats,
        boolean lit,
        List<SeasonQuestion.Lying> movable,
        Set<String> ticked,
        FormReader form) {
    static final String TEMPLATE = "plan/list.peb";
}
