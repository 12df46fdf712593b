package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.web.Refusal;
import warmshelf.web.Visitor;

/** Reads a plan for its pages and holds it against the records as they stand. */
final class KeptPlanView {
    private final PlanStore plans;
    private final PlanQuestionStore questions;
    private final PlanNoteStore notes;
    private final FreedSpaceStore freed;
    private final TrialWarmthStore trials;

    KeptPlanView(
            PlanStore plans,
            PlanQuestionStore questions,
            PlanNoteStore notes,
            FreedSpaceStore freed,
            TrialWarmthStore trials) {
        this.plans = plans;
        this.questions = questions;
        this.notes = notes;
        this.freed = freed;
        this.trials = trials;
    }

    KeptPlan plan(UUID id) {
        return plans.find(id).orElseThrow(Refusal::notFound);
    }

    /** A plan that may be changed or published. */
    KeptPlan open(UUID id) {
        KeptPlan plan = plan(id);
        if (!plan.isOpen()) {
            throw Refusal.conflict(SAY.notProposed(plan.state().words()));
        }
        return plan;
    }

    PlanDraft draft(KeptPlan plan, Visitor visitor) {
        Set<UUID> freed = plan.isOpen() ? plan.freed() : Set.of();
        return PlanDraft.of(questions.question(freed, plan.withLight(), visitor.today()), plan.plan(), visitor.units());
    }

    /**
     * The plan's page.
     *
     * @param problems why what was just tried could not be done
     * @param changes what others changed since the visitor looked
     */
    PlanPage page(KeptPlan plan, Visitor visitor, List<String> problems, List<PlanStore.Edit> changes) {
        PlanDraft draft = draft(plan, visitor);
        return new PlanPage(
                plan,
                PlanView.of(draft),
                plan.isOpen() ? List.of() : notes.ofPlan(plan.id(), visitor.units()),
                plan.isOpen() ? warnings(draft, visitor) : List.of(),
                problems,
                changes,
                plans.editsSince(plan.id(), 0),
                heldBack(plan, visitor),
                plan.isOpen() ? questions.held() : List.of(),
                isLastPublished(plan));
    }

    private List<String> warnings(PlanDraft draft, Visitor visitor) {
        return trials.apart(draft.warmth()).stream()
                .map(apart -> apart.words(visitor.units()))
                .toList();
    }

    private int heldBack(KeptPlan plan, Visitor visitor) {
        return freed.heldBeyond(visitor.today()).stream()
                .filter(held -> held.planId().equals(plan.id()))
                .mapToInt(FreedSpaceStore.HeldBack::rooms)
                .sum();
    }

    private boolean isLastPublished(KeptPlan plan) {
        return plans.lastPublished().filter(last -> last.id().equals(plan.id())).isPresent();
    }
}
