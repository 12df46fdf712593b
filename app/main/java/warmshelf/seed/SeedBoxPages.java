package warmshelf.seed;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.crop.CropCatalogue;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.web.WholePage;

/** The seed box: what seed there is, whose, how much, and how well it comes up. */
final class SeedBoxPages implements Pages {
    private static final int LAST_PAGE = 10_000;

    private final LotStore lots;
    private final LotBalanceStore balances;
    private final LotUse use;
    private final CropCatalogue crops;

    SeedBoxPages(LotStore lots, LotBalanceStore balances, LotUse use, CropCatalogue crops) {
        this.lots = lots;
        this.balances = balances;
        this.use = use;
        this.crops = crops;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/seeds", this::list, Role.MEMBER);
    }

    private void list(Context ctx) {
        String text = ctx.queryParam("q");
        LotSearch search = SeedBoxPage.search(text == null ? "" : text, pageNumber(ctx), crops);
        List<Lot> found = lots.list(search);
        if (found.isEmpty() && !search.text().isEmpty()) {
            search = SeedBoxPage.forgiving(search, lots.varieties(), crops);
            found = lots.list(search);
        }
        int season = Visitor.of(ctx).season();
        boolean wholeBox = search.text().isEmpty() && search.page() == 0;
        Respond.page(
                ctx,
                "seed/list.peb",
                new WholePage(SeedBoxPage.of(
                        search,
                        found,
                        balances.of(found),
                        evidence(found),
                        crops,
                        season,
                        wholeBox ? worthTesting(season) : List.of())));
    }

    private List<WorthTesting.Suggestion> worthTesting(int season) {
        Map<UUID, LotUse.Meant> meant = use.meant(season);
        List<Lot> candidates = WorthTesting.candidates(lots.withSeed(), meant);
        return new WorthTesting(crops, season, evidence(candidates)).of(candidates, meant);
    }

    private LotEvidence evidence(List<Lot> some) {
        List<UUID> ids = some.stream().map(Lot::id).toList();
        return new LotEvidence(lots.testsOf(ids), use.results(ids));
    }

    private static int pageNumber(Context ctx) {
        String number = ctx.queryParam("page");
        // An address with a page that cannot be shows the first one rather than an error.
        return number != null && number.matches("\\d{1,5}") ? Math.min(LAST_PAGE, Integer.parseInt(number)) : 0;
    }
}
