package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Publishing a plan, taking the last publication back, and offering the places that came free by that. */
final class PlanPublishPages implements Pages {
    private final PlanStore plans;
    private final KeptPlanView view;
    private final PlanPublishStore publications;
    private final PlanUndoStore undoing;
    private final FreedSpaceStore freed;

    PlanPublishPages(
            PlanStore plans,
            KeptPlanView view,
            PlanPublishStore publications,
            PlanUndoStore undoing,
            FreedSpaceStore freed) {
        this.plans = plans;
        this.view = view;
        this.publications = publications;
        this.undoing = undoing;
        this.freed = freed;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/plans/{id}/publication", this::publish, Role.COORDINATOR);
        routes.post("/plans/{id}/undoing", this::undo, Role.COORDINATOR);
        routes.post("/plans/{id}/offers", this::offer, Role.COORDINATOR);
    }

    private void publish(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = view.open(Respond.id(ctx, "id"));
        FormReader form = new FormReader(ctx.formParamMap());
        int version = form.wholeNumber("version", SAY.versionField(), 1, Integer.MAX_VALUE - 1);
        if (!form.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", form.problems().values()));
        }
        PlanDraft draft = view.draft(plan, visitor);
        if (!draft.problems().isEmpty()) {
            notPublished(ctx, plan, draft.clashes(), List.of());
            return;
        }
        Decision<UUID> published = publications.publish(plan.id(), version, draft, visitor.memberId());
        if (!(published instanceof Decision.Done)) {
            notPublished(
                    ctx,
                    plan,
                    List.of(Decisions.words(published, visitor.units())),
                    plans.editsSince(plan.id(), version));
            return;
        }
        Respond.seeOther(
                ctx,
                "/plans/" + plan.id(),
                SAY.published(
                        draft.plan().placed().size(), draft.plan().refused().size()));
    }

    private void notPublished(Context ctx, KeptPlan plan, List<String> why, List<PlanStore.Edit> changes) {
        List<String> problems = new ArrayList<>(List.of(SAY.nothingPublished()));
        problems.addAll(why);
        Respond.overtaken(ctx, PlanPage.TEMPLATE, view.page(view.plan(plan.id()), Visitor.of(ctx), problems, changes));
    }

    private void undo(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = view.plan(Respond.id(ctx, "id"));
        if (plans.lastPublished().filter(last -> last.id().equals(plan.id())).isEmpty()) {
            throw Refusal.conflict(SAY.onlyLastUndone());
        }
        PlanUndoStore.Undone undone =
                Decisions.doneOr(undoing.undo(plan.id(), visitor.today(), visitor.memberId()), visitor.units());
        String undoneWords = undone.restored() == 0
                ? SAY.undoneWaits(undone.waiting())
                : SAY.undone(undone.restored(), undone.waiting());
        String kept = undone.begun().isEmpty() ? "" : " " + SAY.begunStays(String.join(", ", undone.begun()));
        Respond.seeOther(ctx, "/plans/" + plan.id(), undoneWords + kept + " " + warmth(undone.matsKept()));
    }

    private static String warmth(List<String> matsKept) {
        return matsKept.isEmpty() ? SAY.matsAsBefore() : SAY.matsAsBeforeExcept(String.join(", ", matsKept));
    }

    private void offer(Context ctx) {
        KeptPlan plan = view.plan(Respond.id(ctx, "id"));
        freed.offer(plan.id(), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, "/plans/" + plan.id(), SAY.placesOffered());
    }
}
