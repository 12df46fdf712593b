package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Asking for space for several crops: gathered one by one, then sent at once, each for itself. */
final class GatheredPages implements Pages {
    private final AskPlanView plans;
    private final AskFormView forms;
    private final AskStore asks;
    private final GatheredStore gathered;
    private final GatheredView view;

    GatheredPages(AskPlanView plans, AskFormView forms, AskStore asks, GatheredStore gathered, GatheredView view) {
        this.plans = plans;
        this.forms = forms;
        this.asks = asks;
        this.gathered = gathered;
        this.view = view;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/ask/gathered", this::gather, Role.MEMBER);
        routes.post("/ask/gathered/sending", this::sendAll, Role.MEMBER);
        routes.post("/ask/gathered/{id}/removal", this::takeOut, Role.MEMBER);
        routes.post("/ask/gathered/{id}/return", this::takeBack, Role.MEMBER);
    }

    private void gather(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        AskPlanView.Reading reading = plans.readToSend(visitor, ctx.formParamMap());
        if (reading.plan().isEmpty()) {
            Respond.again(ctx, AskFormPage.TEMPLATE, forms.page(visitor, reading.form()));
            return;
        }
        AskPlan plan = reading.plan().get();
        Decision<UUID> kept = keep(visitor, plan, reading);
        if (kept instanceof Decision.Done) {
            Respond.seeOther(ctx, "/ask", SAY.gathered(plan.title()));
            return;
        }
        reading.form().refuse(AskAddress.GATHERED, Decisions.words(kept, visitor.units()));
        Respond.again(ctx, AskFormPage.TEMPLATE, forms.page(visitor, reading.form()));
    }

    private Decision<UUID> keep(Visitor visitor, AskPlan plan, AskPlanView.Reading reading) {
        UUID member = visitor.memberId();
        return AskAddress.gathered(reading.form())
                .map(id -> gathered.change(id, member, plan.title(), AskAddress.toKeep(reading.form())))
                .orElseGet(() -> gathered.add(member, plan.title(), AskAddress.toKeep(reading.form())));
    }

    /** Sends what the page showed; what was gathered since on another page stays for itself. */
    private void sendAll(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<String> shown = ctx.formParams("id");
        List<GatheredView.Judged> there = view.judged(visitor).stream()
                .filter(each -> shown.contains(each.gathered().id().toString()))
                .toList();
        long sent = there.stream()
                .filter(each -> each.trouble().isEmpty())
                .filter(each -> send(visitor, each))
                .count();
        if (there.isEmpty()) {
            Respond.seeOther(ctx, "/sowings", SAY.nothingGatheredLeft());
        } else if (sent == there.size()) {
            Respond.seeOther(ctx, "/sowings", SAY.allSent((int) sent));
        } else {
            Respond.seeOther(ctx, "/ask", SAY.someSent((int) sent, there.size() - (int) sent));
        }
    }

    /** Judged once more by itself, for those sent before it have changed what is left. */
    private boolean send(Visitor visitor, GatheredView.Judged each) {
        return plans.readToSend(visitor, GatheredView.typed(each.gathered()))
                .plan()
                .map(plan -> asks.sendGathered(plan, each.gathered().id(), visitor.today(), visitor.memberId()))
                .filter(Decision.Done.class::isInstance)
                .isPresent();
    }

    private void takeOut(Context ctx) {
        UUID id = Respond.id(ctx, "id");
        if (gathered.takeOut(id, Visitor.of(ctx).memberId(), true)) {
            Notice.leaveUndo(ctx, "/ask/gathered/" + id + "/return");
            Respond.seeOther(ctx, "/ask", SAY.takenOut());
        } else {
            Respond.seeOther(ctx, "/ask", SAY.notGatheredAnyMore());
        }
    }

    private void takeBack(Context ctx) {
        boolean back = gathered.takeOut(Respond.id(ctx, "id"), Visitor.of(ctx).memberId(), false);
        Respond.seeOther(ctx, "/ask", back ? SAY.takenBackIn() : SAY.notGatheredAnyMore());
    }
}
