package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.decision.Decision;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Asking for space: sending what was planned. */
final class AskSendPages implements Pages {
    private final AskPlanView plans;
    private final AskFormView forms;
    private final AskStore asks;

    AskSendPages(AskPlanView plans, AskFormView forms, AskStore asks) {
        this.plans = plans;
        this.forms = forms;
        this.asks = asks;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/sowings", this::send, Role.MEMBER);
    }

    private void send(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        AskPlanView.Reading reading = plans.readToSend(visitor, ctx.formParamMap());
        if (reading.plan().isEmpty()) {
            again(ctx, reading.form());
            return;
        }
        AskPlan plan = reading.plan().get();
        Decision<SeedClaimStore.Held> decision = keep(visitor, plan, reading.form());
        if (decision instanceof Decision.Refused<SeedClaimStore.Held> few) {
            reading.form().refuse("plants", SAY.somebodyWasQuicker(few.reason().words(visitor.units())));
            again(ctx, reading.form());
            return;
        }
        if (decision instanceof Decision.Overtaken<SeedClaimStore.Held> sent) {
            reading.form().refuse(AskAddress.GATHERED, sent.reason().words(visitor.units()));
            again(ctx, reading.form());
            return;
        }
        SeedClaimStore.Held held = Decisions.doneOr(decision, visitor.units());
        Respond.seeOther(ctx, "/sowings/" + held.sowingId(), said(plan, held));
    }

    private Decision<SeedClaimStore.Held> keep(Visitor visitor, AskPlan plan, FormReader form) {
        return AskAddress.gathered(form)
                .map(id -> asks.sendGathered(plan, id, visitor.today(), visitor.memberId()))
                .orElseGet(() -> asks.send(plan, visitor.today(), visitor.memberId()));
    }

    private void again(Context ctx, FormReader form) {
        Respond.again(ctx, AskFormPage.TEMPLATE, forms.page(Visitor.of(ctx), form));
    }

    private static String said(AskPlan plan, SeedClaimStore.Held held) {
        String place = plan.wish() == null ? SAY.keptWithoutMat() : SAY.sent();
        SeedClaimStore.Owner asked = held.asked();
        return asked == null ? place : place + " " + SAY.ownerIsAskedToo(asked.name());
    }
}
