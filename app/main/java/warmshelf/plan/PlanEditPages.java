package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import warmshelf.decision.Decision;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Changes of a proposed plan by hand; each is judged before it is kept. */
final class PlanEditPages implements Pages {
    private static final String TEMPLATE = "plan/edit.peb";
    private static final int ANY = Integer.MAX_VALUE - 1;

    private final PlanStore plans;
    private final KeptPlanView view;

    PlanEditPages(PlanStore plans, KeptPlanView view) {
        this.plans = plans;
        this.view = view;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/plans/{id}/requests/{request}", this::show, Role.COORDINATOR);
        routes.post("/plans/{id}/requests/{request}", this::change, Role.COORDINATOR);
        routes.post("/plans/{id}/requests/{request}/removal", this::remove, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = view.open(Respond.id(ctx, "id"));
        PlanDraft draft = view.draft(plan, visitor);
        Asked asked = asked(ctx, draft);
        Optional<PlacedStay> placed = draft.placed(asked.wanted().id());
        FormReader form = PlanEditForm.filled(placed, asked, setPoints(draft), visitor.units());
        Respond.page(ctx, TEMPLATE, page(ctx, plan, plan.version(), draft, asked, form));
    }

    private static Asked asked(Context ctx, PlanDraft draft) {
        return Optional.ofNullable(draft.asked().asked().get(ctx.pathParam("request")))
                .orElseThrow(Refusal::notFound);
    }

    private static PlanEditPage page(
            Context ctx, KeptPlan plan, int version, PlanDraft draft, Asked asked, FormReader form) {
        return new PlanEditPage(
                plan,
                version,
                asked,
                draft.placed(asked.wanted().id()).map(PlanWords::where).orElse(""),
                form,
                PlanEditForm.places(draft.asked(), Visitor.of(ctx).units()),
                PlanEditForm.slots(asked));
    }

    /**
     * One request of a plan, and the form that gives it another place.
     *
     * @param version of the plan, as it was when the visitor opened it
     * @param where it lies in this plan; empty: nowhere
     */
    private record PlanEditPage(
            KeptPlan plan,
            int version,
            Asked asked,
            String where,
            FormReader form,
            List<Choice> places,
            List<Choice> slots) {}

    private void change(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = view.open(Respond.id(ctx, "id"));
        PlanDraft draft = view.draft(plan, visitor);
        Asked asked = asked(ctx, draft);
        PlanEditForm form = new PlanEditForm(ctx.formParamMap(), draft.asked(), asked);
        int version = form.reader().wholeNumber("version", SAY.versionField(), 1, ANY);
        double shown = PlanEditForm.shown(draft.placed(asked.wanted().id()), asked, setPoints(draft));
        Optional<PlacedStay> wanted = form.placement(visitor.units(), shown);
        if (wanted.isPresent() && form.reader().ok()) {
            PlacedStay placed = withLight(draft, asked, wanted.get());
            PlanDraft after = draft.with(placed, form.celsius());
            List<String> clashes = after.clashesSince(draft);
            if (clashes.isEmpty()) {
                String words = "%s: %s".formatted(asked.title(), PlanWords.where(placed));
                keep(ctx, plan, version, after.plan(), words, words + ".");
                return;
            }
            form.reader().refuse("place", String.join(" ", clashes));
        }
        Respond.again(ctx, TEMPLATE, page(ctx, plan, version, draft, asked, form.reader()));
    }

    private static SetPointDays setPoints(PlanDraft draft) {
        return new SetPointDays(draft.asked().question(), draft.plan().setPoints());
    }

    /** With the place under a light that it asked for, where one is free; where none is, the judge says so. */
    private static PlacedStay withLight(PlanDraft draft, Asked asked, PlacedStay stay) {
        Request.Light light = asked.wanted().light();
        return light == null
                ? stay
                : new PlacedStay(
                        stay.request(),
                        stay.mat(),
                        stay.place(),
                        stay.slot(),
                        stay.days(),
                        draft.litPlacesWithout(stay.request())
                                .after(stay.mat(), stay.days(), light)
                                .orElse(null));
    }

    private void remove(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = view.open(Respond.id(ctx, "id"));
        PlanDraft draft = view.draft(plan, visitor);
        Asked asked = asked(ctx, draft);
        FormReader form = new FormReader(ctx.formParamMap());
        int version = form.wholeNumber("version", SAY.versionField(), 1, ANY);
        if (!form.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", form.problems().values()));
        }
        if (draft.placed(asked.wanted().id()).isEmpty()) {
            throw Refusal.conflict(SAY.noPlaceInPlan(asked.title()));
        }
        SeasonPlan after = draft.without(asked.wanted().id(), new NoPlaceReason.TakenOut(visitor.called()))
                .plan();
        String words = SAY.takenOut(asked.title());
        keep(ctx, plan, version, after, words, words + ".");
    }

    private void keep(Context ctx, KeptPlan plan, int version, SeasonPlan after, String words, String notice) {
        Visitor visitor = Visitor.of(ctx);
        Decision<Integer> kept = plans.change(plan.id(), version, after, words, visitor.memberId());
        if (kept instanceof Decision.Done) {
            Respond.seeOther(ctx, "/plans/" + plan.id(), notice);
            return;
        }
        Respond.overtaken(
                ctx,
                PlanPage.TEMPLATE,
                view.page(
                        view.plan(plan.id()),
                        visitor,
                        List.of(Decisions.words(kept, visitor.units())),
                        plans.editsSince(plan.id(), version)));
    }
}
