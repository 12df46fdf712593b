package warmshelf.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Changes of a proposed plan by hand; each is judged before it is kept. */
final class PlanEditPages implements Pages {
    private static final int ANY = Integer.MAX_VALUE - 1;

    private final PlanStore plans;
    private final PlanDesk desk;

    PlanEditPages(PlanStore plans, PlanDesk desk) {
        this.plans = plans;
        this.desk = desk;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/plans/{id}/requests/{request}", this::show, Role.COORDINATOR);
        routes.post("/plans/{id}/requests/{request}", this::change, Role.COORDINATOR);
        routes.post("/plans/{id}/requests/{request}/removal", this::remove, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = desk.open(ctx.pathParam("id"));
        PlanDraft draft = desk.draft(plan, visitor);
        Asked asked = asked(ctx, draft);
        Optional<PlacedStay> placed = draft.placed(asked.wanted().id());
        FormReader form = PlanEditForm.filled(placed, asked, setPoints(draft), visitor.units());
        ctx.render("plan/edit.peb", model(ctx, plan, plan.version(), draft, asked, form));
    }

    private static Asked asked(Context ctx, PlanDraft draft) {
        return Optional.ofNullable(draft.asked().asked().get(ctx.pathParam("request")))
                .orElseThrow(Refusal::notFound);
    }

    private static Map<String, Object> model(
            Context ctx, KeptPlan plan, int version, PlanDraft draft, Asked asked, FormReader form) {
        Map<String, Object> model = new HashMap<>();
        model.put("plan", plan);
        model.put("version", version);
        model.put("asked", asked);
        model.put(
                "where", draft.placed(asked.wanted().id()).map(PlanWords::where).orElse(""));
        model.put("form", form);
        model.put("places", PlanEditForm.places(draft.asked(), Visitor.of(ctx).units()));
        model.put("slots", PlanEditForm.slots(asked));
        return model;
    }

    private void change(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        KeptPlan plan = desk.open(ctx.pathParam("id"));
        PlanDraft draft = desk.draft(plan, visitor);
        Asked asked = asked(ctx, draft);
        PlanEditForm form = new PlanEditForm(ctx.formParamMap(), draft.asked(), asked);
        int version = form.reader().wholeNumber("version", "The plan's version", 1, ANY);
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
        Respond.again(ctx, "plan/edit.peb", model(ctx, plan, version, draft, asked, form.reader()));
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
        KeptPlan plan = desk.open(ctx.pathParam("id"));
        PlanDraft draft = desk.draft(plan, visitor);
        Asked asked = asked(ctx, draft);
        FormReader form = new FormReader(ctx.formParamMap());
        int version = form.wholeNumber("version", "The plan's version", 1, ANY);
        if (!form.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", form.problems().values()));
        }
        if (draft.placed(asked.wanted().id()).isEmpty()) {
            throw Refusal.conflict("%s has no place in this plan.".formatted(asked.title()));
        }
        SeasonPlan after = draft.without(asked.wanted().id(), "%s took it out of the plan.".formatted(visitor.name()))
                .plan();
        String words = "%s: taken out".formatted(asked.title());
        keep(ctx, plan, version, after, words, words + ".");
    }

    private void keep(Context ctx, KeptPlan plan, int version, SeasonPlan after, String words, String notice) {
        Visitor visitor = Visitor.of(ctx);
        if (plans.change(plan.id(), version, after, words, visitor.memberId())) {
            Respond.seeOther(ctx, "/plans/" + plan.id(), notice);
            return;
        }
        KeptPlan now = desk.plan(plan.id().toString());
        ctx.status(HttpStatus.CONFLICT)
                .render(
                        "plan/show.peb",
                        desk.model(
                                now,
                                visitor,
                                List.of("Not kept: %s. Somebody changed this plan after you opened it."
                                        .formatted(words)),
                                plans.editsSince(plan.id(), version)));
    }
}
