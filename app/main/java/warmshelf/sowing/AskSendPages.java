package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
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
        AskPlanView.Reading reading = plans.read(visitor, ctx.formParamMap());
        if (reading.plan().isEmpty()) {
            again(ctx, reading.form());
            return;
        }
        AskPlan plan = reading.plan().get();
        if (!plan.canBeSent()) {
            reading.form()
                    .refuse(
                            "plants",
                            "It is too late to sow this for the season; see the plan for what to do instead.");
            again(ctx, reading.form());
            return;
        }
        AskStore.Sent sent = asks.send(plan, visitor.today(), visitor.memberId());
        if (sent.claim() instanceof SeedClaimStore.Claim.TooFewSeeds few) {
            reading.form().refuse("plants", "Somebody was quicker. " + few.sentence(visitor.memberId()));
            again(ctx, reading.form());
            return;
        }
        Respond.seeOther(ctx, "/sowings/" + sent.sowingId(), said(plan, sent));
    }

    private void again(Context ctx, FormReader form) {
        Respond.again(ctx, AskFormPage.TEMPLATE, forms.page(Visitor.of(ctx), form));
    }

    private static String said(AskPlan plan, AskStore.Sent sent) {
        String place = plan.wish() == null
                ? "Kept. It needs no mat, so it stands in your sowings right away."
                : "Sent. A coordinator will find it a place; you see here when it has one.";
        String seed = sent.claim() instanceof SeedClaimStore.Claim.Asked asked
                ? " %s is asked for the seed, and the answer shows here too.".formatted(asked.owner())
                : "";
        return place + seed;
    }
}
