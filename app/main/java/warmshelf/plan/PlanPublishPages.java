package warmshelf.plan;

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
        int version = form.wholeNumber("version", "The plan's version", 1, Integer.MAX_VALUE - 1);
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
                "Published: %d placed, %s."
                        .formatted(
                                draft.plan().placed().size(),
                                told(draft.plan().refused().size())));
    }

    private static String told(int waiting) {
        return switch (waiting) {
            case 0 -> "and nobody waits";
            case 1 -> "1 is told why it waits";
            default -> waiting + " are told why they wait";
        };
    }

    private void notPublished(Context ctx, KeptPlan plan, List<String> why, List<PlanStore.Edit> changes) {
        List<String> problems = new ArrayList<>(List.of("Nothing was published."));
        problems.addAll(why);
        Respond.overtaken(ctx, PlanPage.TEMPLATE, view.page(view.plan(plan.id()), Visitor.of(ctx), problems, changes));
    }

    private void undo(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = view.plan(Respond.id(ctx, "id"));
        if (plans.lastPublished().filter(last -> last.id().equals(plan.id())).isEmpty()) {
            throw Refusal.conflict("Only the last publication can be undone.");
        }
        PlanUndoStore.Undone undone =
                Decisions.doneOr(undoing.undo(plan.id(), visitor.today(), visitor.memberId()), visitor.units());
        String before = undone.restored() == 0
                ? ""
                : (undone.restored() == 1
                        ? "1 lies where it lay before, "
                        : undone.restored() + " lie where they lay before, ");
        String kept = undone.begun().isEmpty()
                ? ""
                : " What has begun stays: %s.".formatted(String.join(", ", undone.begun()));
        Respond.seeOther(
                ctx,
                "/plans/" + plan.id(),
                "Undone: %s%d %s for a place again.%s %s"
                        .formatted(
                                before,
                                undone.waiting(),
                                undone.waiting() == 1 ? "waits" : "wait",
                                kept,
                                warmth(undone.matsKept())));
    }

    private static String warmth(List<String> matsKept) {
        String before = "The mats are set as they were before";
        return matsKept.isEmpty()
                ? before + "."
                : "%s, except on days that something lying there needs or that somebody has set since: %s."
                        .formatted(before, String.join(", ", matsKept));
    }

    private void offer(Context ctx) {
        KeptPlan plan = view.plan(Respond.id(ctx, "id"));
        freed.offer(plan.id(), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, "/plans/" + plan.id(), "The places are offered to everybody who waits and fits.");
    }
}
