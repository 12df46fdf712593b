package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** A stay's page, taking its last move back, and freeing its place. Members may look. */
public final class StayPages implements Pages {
    private final MoveStore moves;
    private final StayView view;

    StayPages(MoveStore moves, StayView view) {
        this.moves = moves;
        this.view = view;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/stays/{id}", this::show, Role.MEMBER);
        routes.post("/stays/{id}/undo", this::undo, Role.SITE_COORDINATOR);
        routes.post("/stays/{id}/release", this::free, Role.SITE_COORDINATOR);
    }

    private void show(Context ctx) {
        LyingStay stay = view.stay(Respond.id(ctx, "id"), Visitor.of(ctx));
        Respond.page(
                ctx,
                StayPage.TEMPLATE,
                view.page(
                        Visitor.of(ctx),
                        stay,
                        new FormReader(Map.of()),
                        new FormReader(Map.of()),
                        ctx.queryParam("back")));
    }

    private void undo(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LyingStay stay = view.stay(Respond.id(ctx, "id"), Visitor.of(ctx));
        UUID back = Decisions.doneOr(moves.takeBack(stay, visitor.today(), visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx,
                MoveForm.back(Objects.requireNonNullElse(ctx.queryParam("back"), ""))
                        .orElse("/stays/" + back),
                SAY.isBack(stay.what(), stay.grower()));
    }

    private void free(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LyingStay stay = view.movable(Respond.id(ctx, "id"), Visitor.of(ctx));
        FormReader form = new FormReader(ctx.formParamMap());
        String reason = form.requiredText("reason", "The reason", 400);
        int version = form.wholeNumber("version", "The version", 1, Integer.MAX_VALUE);
        if (!form.ok()) {
            Respond.again(
                    ctx,
                    StayPage.TEMPLATE,
                    view.page(Visitor.of(ctx), stay, new FormReader(Map.of()), form, ctx.queryParam("back")));
            return;
        }
        Decision<UUID> freed = version == stay.stay().version()
                ? moves.free(stay, reason, visitor.today(), visitor.memberId())
                : new Decision.Overtaken<>(moves.whatChanged(stay.stay().id(), version));
        if (freed instanceof Decision.Overtaken) {
            form.refuse("reason", Decisions.words(freed, visitor.units()));
            Respond.overtaken(
                    ctx,
                    StayPage.TEMPLATE,
                    view.page(Visitor.of(ctx), stay, new FormReader(Map.of()), form, ctx.queryParam("back")));
            return;
        }
        Decisions.doneOr(freed, visitor.units());
        Respond.seeOther(
                ctx,
                MoveForm.back(form.text("back"))
                        .orElse("/sowings/" + stay.stay().sowingId()),
                stay.stay().isOnMat() ? SAY.freedWaitsAgain(stay.grower()) : SAY.freed(stay.grower()));
    }
}
