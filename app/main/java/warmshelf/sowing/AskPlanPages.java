package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.seed.GrownBefore;
import warmshelf.seed.LotBalanceStore;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Asking for space: the plan that the form leads to, before anything is sent. */
final class AskPlanPages implements Pages {
    private final AskPlanView plans;
    private final AskFormView forms;
    private final CropCatalogue crops;
    private final SowingPlanner planner;
    private final LotBalanceStore balances;
    private final AcceptedRiskStore risks;
    private final GrownBefore grown;

    AskPlanPages(
            AskPlanView plans, AskFormView forms, SowingStores stores, AcceptedRiskStore risks, GrownBefore grown) {
        this.plans = plans;
        this.forms = forms;
        this.crops = stores.crops();
        this.planner = stores.planner();
        this.balances = stores.balances();
        this.risks = risks;
        this.grown = grown;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/ask/plan", this::plan, Role.MEMBER);
    }

    private void plan(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        AskPlanView.Reading reading = plans.read(visitor, ctx.queryParamMap());
        if (reading.plan().isEmpty()) {
            Respond.again(ctx, AskFormPage.TEMPLATE, forms.page(visitor, reading.form()));
            return;
        }
        Respond.page(
                ctx,
                "sowing/plan.peb",
                page(ctx, visitor, reading.form(), reading.plan().get()));
    }

    /** The days in short: when to sow, when it goes out, and the first harvest; null where the plan has none. */
    public record Days(
            @Nullable LocalDate sow,
            @Nullable LocalDate out,
            @Nullable LocalDate ripe) {
        static Days of(Timeline timeline) {
            return new Days(ideal(timeline, Step.SOW), ideal(timeline, Step.PLANT_OUT), ideal(timeline, Step.RIPE));
        }

        private static @Nullable LocalDate ideal(Timeline timeline, Step step) {
            return timeline.step(step).map(TimelineStep::ideal).orElse(null);
        }
    }

    /**
     * What would come of a request.
     *
     * @param steps none where it is too late: nobody needs a plan that is dead
     * @param instead what is still in time, where this is not
     * @param others the other parts of the season for which it is
     * @param alsoToKnow sentences of its season
     * @param grown what growers said of the variety; empty where nobody has
     * @param typed what was asked for, to be sent on
     * @param kept what of it the folds of the assumptions do not ask
     * @param changeAddress back to the second question
     * @param roomAddress the same plan at room temperature
     */
    private record AskPlanPage(
            AskPlan plan,
            Days days,
            List<StepLine> steps,
            List<StillInTime.Other> instead,
            List<OtherPart> others,
            List<String> alsoToKnow,
            String grown,
            Map<String, String> typed,
            Map<String, String> kept,
            FormReader form,
            AskAssumed assumed,
            AskChoices choices,
            String changeAddress,
            String roomAddress) {}

    private AskPlanPage page(Context ctx, Visitor visitor, FormReader form, AskPlan plan) {
        Map<String, String> typed = AskAddress.answers(ctx.queryParamMap());
        return new AskPlanPage(
                plan,
                Days.of(plan.timeline()),
                plan.canBeSent() ? steps(plan, visitor) : List.of(),
                plan.canBeSent() ? List.of() : instead(visitor, plan),
                OtherPart.of(plan, planner, visitor.today(), typed),
                plan.timeline().season().sentences(visitor.units()),
                grown.words(plan.asking().crop().id(), plan.ask().variety()),
                typed,
                AskAddress.withoutAssumed(typed),
                form,
                AskAssumed.of(plan, form),
                AskChoices.all(visitor.units().inInches()),
                AskAddress.of("/ask", typed),
                AskAddress.with("/ask/plan", typed, "heat", "room"));
    }

    private List<StepLine> steps(AskPlan plan, Visitor visitor) {
        return StepLine.of(
                plan.timeline(),
                plan.asking(),
                plan.asking().crop().hazardsOf(plan.ask().treated()),
                crops,
                visitor.units());
    }

    private List<StillInTime.Other> instead(Visitor visitor, AskPlan plan) {
        Map<Hardiness, Double> accepted = risks.of(visitor.memberId());
        return new StillInTime(planner, crops, each -> accepted.getOrDefault(each, each.usualRisk()))
                .insteadOf(plan.asking(), balances.freeFor(visitor.memberId()), visitor.today());
    }
}
