package warmshelf.plan;

import java.util.List;
import warmshelf.allocation.RackHold;

/**
 * A plan, proposed or published.
 *
 * @param told what members were told of it; empty while it is open
 * @param warnings what it would do to trials, or empty
 * @param problems why what was just tried could not be done, or empty
 * @param changes what others changed since the visitor looked, or empty
 * @param edits all that was changed by hand, the oldest first
 * @param heldBack how many places that came free by it are offered to nobody
 * @param held the racks that are held now: what lies there does not move
 * @param undoable whether it is the last publication, which can be taken back
 */
record PlanPage(
        KeptPlan plan,
        PlanView view,
        List<PlanNoteStore.Told> told,
        List<String> warnings,
        List<String> problems,
        List<PlanStore.Edit> changes,
        List<PlanStore.Edit> edits,
        int heldBack,
        List<RackHold> held,
        boolean undoable) {
    static final String TEMPLATE = "plan/show.peb";
}
