package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.allocation.RackHoldStore;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Clearing a rack that was held. */
public final class HeldRackPages implements Pages {
    private final RackHoldStore holds;

    HeldRackPages(RackHoldStore holds) {
        this.holds = holds;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/racks/{id}/clearing", this::clear, Role.SITE_COORDINATOR);
    }

    private void clear(Context ctx) {
        boolean cleared = holds.clear(Respond.id(ctx, "id"), Visitor.of(ctx).memberId());
        Respond.seeOther(
                ctx,
                GoOn.to(new FormReader(ctx.formParamMap()).text("then"), "/today"),
                cleared ? SAY.rackCleared() : SAY.rackNotHeld());
    }
}
