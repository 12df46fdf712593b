package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.BadInput;
import warmshelf.plan.SeasonQuestion.Lying;
import warmshelf.plan.engine.FixedStays;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Season plans: starting a run, watching it, looking at what it proposes. */
final class PlanPages implements Pages {
    private static final int REFRESH_SECONDS = 3;

    private final PlanStore plans;
    private final PlanQuestionStore questions;
    private final PlanJob job;
    private final KeptPlanView view;

    PlanPages(PlanStore plans, PlanQuestionStore questions, PlanJob job, KeptPlanView view) {
        this.plans = plans;
        this.questions = questions;
        this.job = job;
        this.view = view;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/plans", this::all, Role.COORDINATOR);
        routes.post("/plans", this::start, Role.COORDINATOR);
        routes.get("/plans/{id}", this::one, Role.COORDINATOR);
        routes.post("/plans/{id}/cancellation", this::cancel, Role.COORDINATOR);
    }

    private void all(Context ctx) {
        FormReader form = new FormReader(
                Map.of("seconds", List.of("30"), "startingNumber", List.of("1"), "withLight", List.of("yes")));
        Respond.page(ctx, PlansPage.TEMPLATE, page(ctx, form, Set.of()));
    }

    private PlansPage page(Context ctx, FormReader form, Set<UUID> ticked) {
        SeasonQuestion question =
                questions.question(Set.of(), false, Visitor.of(ctx).today());
        List<KeptPlan> newest = plans.newest();
        return new PlansPage(
                newest,
                newest.stream().anyMatch(KeptPlan::isRunning),
                question.asked().size(),
                question.mats().size(),
                !question.litPlaces().isEmpty(),
                movable(question),
                ticked.stream().map(UUID::toString).collect(Collectors.toSet()),
                form);
    }

    private static List<Lying> movable(SeasonQuestion question) {
        return question.lying().values().stream()
                .filter(lying -> lying.stay().isOnMat() && !lying.stay().isBegunBy(question.today()))
                .toList();
    }

    private void start(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        PlanStartForm form = new PlanStartForm(ctx.formParamMap());
        if (!form.reader().ok()) {
            Respond.again(ctx, PlansPage.TEMPLATE, page(ctx, form.reader(), new HashSet<>(form.freed())));
            return;
        }
        SeasonQuestion question = questions.question(new HashSet<>(form.freed()), form.withLight(), visitor.today());
        if (question.asked().isEmpty()) {
            throw Refusal.conflict(SAY.nothingWaits());
        }
        refuseWhatNoPlanCouldMend(question);
        // Only those that could be freed are kept as freed: what has begun, or is gone, stays as it is.
        List<UUID> freed = question.asked().values().stream()
                .flatMap(asked -> Optional.ofNullable(asked.freed()).stream())
                .map(warmshelf.allocation.Stay::id)
                .toList();
        UUID plan = Decisions.doneOr(plans.begin(question, freed, form.manner(), visitor.memberId()), visitor.units());
        job.start(plan, question.question(), form.startingNumber(), form.seconds());
        Respond.seeOther(ctx, "/plans/" + plan, SAY.runBegun());
    }

    /** Stays that already overload a circuit, say, are told at once rather than by a run that breaks off. */
    private static void refuseWhatNoPlanCouldMend(SeasonQuestion question) {
        try {
            FixedStays.check(question.question());
        } catch (BadInput broken) {
            throw Refusal.conflict(SAY.doesNotHoldTogether(String.valueOf(broken.getMessage())));
        }
    }

    private void one(Context ctx) {
        KeptPlan plan = view.plan(Respond.id(ctx, "id"));
        if (plan.isRunning()) {
            ctx.header("Refresh", String.valueOf(REFRESH_SECONDS));
            Respond.page(ctx, "plan/running.peb", new RunningPage(plan));
            return;
        }
        Respond.page(ctx, PlanPage.TEMPLATE, view.page(plan, Visitor.of(ctx), List.of(), List.of()));
    }

    /** A plan that is being made. */
    private record RunningPage(KeptPlan plan) {}

    private void cancel(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID plan = Decisions.doneOr(plans.askToStop(Respond.id(ctx, "id"), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/plans/" + plan, SAY.stops());
    }
}
