package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.seed.GrownBefore;
import warmshelf.seed.LotBalanceStore;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

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
        Respond.page(ctx, "sowing/plan.peb", page(ctx, visitor, reading.plan().get()));
    }

    /**
     * What would come of a request.
     *
     * @param instead what is still in time, where this is not
     * @param others the other parts of the season for which it is
     * @param alsoToKnow sentences of its season
     * @param grown what growers said of the variety; empty where nobody has
     * @param typed what was asked for, to be sent on
     * @param changeAddress back to the form
     * @param roomAddress the same plan at room temperature
     */
    private record AskPlanPage(
            AskPlan plan,
            List<StepLine> steps,
            List<StillInTime.Other> instead,
            List<OtherPart> others,
            List<String> alsoToKnow,
            String grown,
            Map<String, String> typed,
            String changeAddress,
            String roomAddress) {}

    private AskPlanPage page(Context ctx, Visitor visitor, AskPlan plan) {
        Map<String, String> typed = firstOfEach(ctx.queryParamMap());
        return new AskPlanPage(
                plan,
                StepLine.of(
                        plan.timeline(),
                        plan.asking(),
                        plan.asking().crop().hazardsOf(plan.ask().treated()),
                        crops,
                        visitor.units()),
                plan.canBeSent() ? List.of() : instead(visitor, plan),
                OtherPart.of(plan, planner, visitor.today(), typed),
                plan.timeline().season().sentences(visitor.units()),
                grown.words(plan.asking().crop().id(), plan.ask().variety()),
                typed,
                "/ask?" + ctx.queryString(),
                "/ask/plan?" + String.valueOf(ctx.queryString()).replace("heat=warm", "heat=room"));
    }

    private List<StillInTime.Other> instead(Visitor visitor, AskPlan plan) {
        Map<Hardiness, Double> accepted = risks.of(visitor.memberId());
        return new StillInTime(planner, crops, each -> accepted.getOrDefault(each, each.usualRisk()))
                .insteadOf(plan.asking(), balances.freeFor(visitor.memberId()), visitor.today());
    }

    private static Map<String, String> firstOfEach(Map<String, List<String>> typed) {
        Map<String, String> texts = new LinkedHashMap<>();
        typed.forEach((name, values) -> {
            if (!name.equals("csrf") && !values.isEmpty()) {
                texts.put(name, values.get(0));
            }
        });
        return texts;
    }
}
