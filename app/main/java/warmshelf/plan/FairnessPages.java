package warmshelf.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** How the mats are shared this season, for everyone to see. */
final class FairnessPages implements Pages {
    private final FairnessStore shares;
    private final ChoiceRankStore ranks;

    FairnessPages(FairnessStore shares, ChoiceRankStore ranks) {
        this.shares = shares;
        this.ranks = ranks;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/plans/fairness", this::show, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int season = visitor.season();
        Fairness fairness = Fairness.of(shares.askings(season, ranks.choices(), visitor.units()));
        Respond.page(ctx, "plan/fairness.peb", new FairnessPage(fairness, String.valueOf(season)));
    }

    /** How the mats of a season, named by its year, are shared. */
    private record FairnessPage(Fairness fairness, String season) {}
}
