package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.UUID;
import warmshelf.decision.Reach;
import warmshelf.placing.LightAfterHeat;
import warmshelf.placing.PlacementStore;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** What members do themselves: put a request first, take a freed place, put a note away. */
final class MemberPlanPages implements Pages {
    private final ChoiceRankStore ranks;
    private final PlanNoteStore notes;
    private final WaitingList waiting;
    private final PlacementStore placements;
    private final LightAfterHeat lights;

    MemberPlanPages(
            ChoiceRankStore ranks,
            PlanNoteStore notes,
            WaitingList waiting,
            PlacementStore placements,
            LightAfterHeat lights) {
        this.ranks = ranks;
        this.notes = notes;
        this.waiting = waiting;
        this.placements = placements;
        this.lights = lights;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/sowings/{id}/first-choice", this::putFirst, Role.MEMBER);
        routes.post("/sowings/{id}/freed-place", this::take, Role.MEMBER);
        routes.post("/notes/{id}/dismissal", this::dismiss, Role.MEMBER);
    }

    private void putFirst(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Decisions.doneOr(ranks.putFirst(Respond.id(ctx, "id"), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/sowings", SAY.firstChoiceNow());
    }

    private void take(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID sowing = Respond.id(ctx, "id");
        WaitingList.FreedOffer offer = waiting.ofMember(visitor.memberId(), visitor.today()).stream()
                .filter(each -> each.sowing().id().equals(sowing))
                .filter(each -> same(ctx, each.fit()))
                .findFirst()
                .orElseThrow(() -> Refusal.conflict(SAY.placeNotToBeHad()));
        if (!offer.warnings().wereShownIn(new FormReader(ctx.formParamMap()))) {
            throw Refusal.conflict(SAY.trialNotAsShown());
        }
        LightAfterHeat.Found light = lights.after(
                offer.sowing(), offer.request(), offer.fit().spot().to(), visitor.today(), Reach.WHOLE_GROUP);
        Decisions.doneOr(
                placements.place(sowing, offer.fit().spot(), offer.fit().warm(), light.spot(), visitor.memberId()),
                visitor.units());
        Respond.seeOther(
                ctx,
                "/sowings",
                SAY.freedPlaceTaken(
                                offer.sowing().title(),
                                offer.fit().mat().name(),
                                DayWords.day(offer.fit().spot().from()),
                                light.words())
                        .strip());
    }

    /** What is offered now is what the member saw; never another place in its stead. */
    private static boolean same(Context ctx, FreedSpaceFit.Fit fit) {
        return fit.spot().placeId().toString().equals(ctx.formParam("place"))
                && String.valueOf(fit.spot().slot().firstQuarter()).equals(ctx.formParam("quarter"))
                && fit.spot().from().toString().equals(ctx.formParam("from"));
    }

    private void dismiss(Context ctx) {
        notes.dismiss(Respond.id(ctx, "id"), Visitor.of(ctx).memberId());
        String then = "/sowings".equals(ctx.formParam("then")) ? "/sowings" : "/today";
        Respond.seeOther(ctx, then, "Put away.");
    }
}
