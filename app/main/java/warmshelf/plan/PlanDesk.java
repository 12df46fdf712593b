package warmshelf.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import warmshelf.web.Refusal;
import warmshelf.web.Visitor;

/** A plan as a page shows it, held against the records as they stand. */
final class PlanDesk {
    private final PlanStore plans;
    private final PlanQuestionStore questions;
    private final PlanNoteStore notes;
    private final FreedSpaceStore freed;

    PlanDesk(PlanStore plans, PlanQuestionStore questions, PlanNoteStore notes, FreedSpaceStore freed) {
        this.plans = plans;
        this.questions = questions;
        this.notes = notes;
        this.freed = freed;
    }

    KeptPlan plan(String id) {
        try {
            UUID plan = UUID.fromString(id);
            return plans.find(plan)
                    .filter(found -> id.equalsIgnoreCase(plan.toString()))
                    .orElseThrow(Refusal::notFound);
        } catch (IllegalArgumentException notAnId) {
            throw Refusal.notFound();
        }
    }

    /** A plan that may be changed or published. */
    KeptPlan open(String id) {
        KeptPlan plan = plan(id);
        if (!plan.isOpen()) {
            throw Refusal.conflict("This plan is %s; only a proposed plan can be changed or published."
                    .formatted(plan.state().words()));
        }
        return plan;
    }

    PlanDraft draft(KeptPlan plan, Visitor visitor) {
        Set<UUID> freed = plan.isOpen() ? plan.freed() : Set.of();
        return PlanDraft.of(questions.question(freed, plan.withLight(), visitor.today()), plan.plan(), visitor.units());
    }

    /**
     * The model of the plan's page.
     *
     * @param problems why what was just tried could not be done
     * @param changes what others changed since the visitor looked
     */
    Map<String, Object> model(KeptPlan plan, Visitor visitor, List<String> problems, List<PlanStore.Edit> changes) {
        Map<String, Object> model = new HashMap<>();
        model.put("plan", plan);
        model.put("view", PlanView.of(draft(plan, visitor)));
        model.put("told", plan.isOpen() ? List.of() : notes.ofPlan(plan.id()));
        model.put("problems", problems);
        model.put("changes", changes);
        model.put("edits", plans.editsSince(plan.id(), 0));
        model.put(
                "heldBack",
                freed.heldBeyond(visitor.today()).stream()
                        .filter(held -> held.planId().equals(plan.id()))
                        .mapToInt(FreedSpaceStore.HeldBack::rooms)
                        .sum());
        model.put(
                "undoable",
                plans.lastPublished()
                        .filter(last -> last.id().equals(plan.id()))
                        .isPresent());
        return model;
    }
}
