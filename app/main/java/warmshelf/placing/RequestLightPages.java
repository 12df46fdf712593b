package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.UUID;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Whether the seed of a request gets its light from its place, or another way that somebody sees to. */
public final class RequestLightPages implements Pages {
    private final PlacementStore placements;

    RequestLightPages(PlacementStore placements) {
        this.placements = placements;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/requests/{id}/light", this::say, Role.SITE_COORDINATOR);
    }

    private void say(Context ctx) {
        UUID sowing = Respond.id(ctx, "id");
        Visitor visitor = Visitor.of(ctx);
        boolean otherwise = new FormReader(ctx.formParamMap()).ticked("otherwise");
        Decisions.doneOr(placements.lightOtherwise(sowing, otherwise, visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/requests/" + sowing, otherwise ? SAY.lightOtherwise() : SAY.litMatsOnly());
    }
}
