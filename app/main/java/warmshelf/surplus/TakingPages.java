package warmshelf.surplus;

import static warmshelf.surplus.SurplusSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import warmshelf.decision.Decision;
import warmshelf.sowing.Sowing;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Taking seedlings that are given away, and what both sides then say of it. */
final class TakingPages implements Pages {
    private static final int MOST_PLANTS = 1_000;

    private final SurplusBookStore book;
    private final SurplusStore store;

    TakingPages(SurplusBookStore book, SurplusStore store) {
        this.book = book;
        this.store = store;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/sowings/{id}/surplus/takings", this::take, Role.MEMBER);
        routes.post("/surplus/takings/{id}/handing-over", this::handOver, Role.MEMBER);
        routes.post("/surplus/takings/{id}/handing-over/undoing", this::notHandedOver, Role.MEMBER);
        routes.post("/surplus/takings/{id}/return", this::giveBack, Role.MEMBER);
    }

    private void take(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        int plants = form.wholeNumber("plants", SAY.plantsField(), 1, MOST_PLANTS);
        if (!form.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", form.problems().values()));
        }
        Sowing sowing = Decisions.doneOr(
                store.take(Respond.id(ctx, "id"), plants, SurplusPages.moment(visitor), visitor.memberId()),
                visitor.units());
        Respond.seeOther(
                ctx,
                "/surplus",
                SAY.taken(
                        SurplusPages.plants(plants),
                        sowing.title(),
                        sowing.grower().name()));
    }

    private void handOver(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Taking taking = concerning(ctx);
        Sowing sowing = done(ctx, store.handOver(taking, visitor.today(), visitor.memberId()));
        Notice.leaveUndo(ctx, "/surplus/takings/" + taking.id() + "/handing-over/undoing");
        Respond.seeOther(ctx, "/surplus", SAY.handedOver(SurplusPages.plants(taking.plants()), sowing.title()));
    }

    private void notHandedOver(Context ctx) {
        Taking taking = concerning(ctx);
        Sowing sowing = done(ctx, store.notHandedOver(taking, Visitor.of(ctx).memberId()));
        Respond.seeOther(ctx, "/surplus", SAY.notHandedOver(SurplusPages.plants(taking.plants()), sowing.title()));
    }

    private void giveBack(Context ctx) {
        Taking taking = concerning(ctx);
        Sowing sowing = done(ctx, store.giveBack(taking, Visitor.of(ctx).memberId()));
        Respond.seeOther(ctx, "/surplus", SAY.givenBack(SurplusPages.plants(taking.plants()), sowing.title()));
    }

    private static Sowing done(Context ctx, Decision<Sowing> decision) {
        return Decisions.doneOr(decision, Visitor.of(ctx).units());
    }

    /** A taking of which the visitor is one side: who takes, who gives, or a coordinator for either. */
    private Taking concerning(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Taking taking = book.taking(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Surplus surplus =
                book.find(taking.sowingId(), SurplusPages.moment(visitor)).orElseThrow(Refusal::notFound);
        if (!taking.memberId().equals(visitor.memberId()) && !surplus.isOf(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(
                    SAY.onlyGrowerOffers(surplus.sowing().grower().name()));
        }
        return taking;
    }
}
