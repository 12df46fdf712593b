package warmshelf.finding.season;

import static warmshelf.finding.season.SeasonSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** A coordinator says what electricity cost in a season. */
public final class EnergyPricePages implements Pages {
    private static final String TEMPLATE = "finding/season/price.peb";
    private static final double LEAST = 0.0001;
    private static final double MOST = 1000;

    private final EnergyPriceStore prices;

    public EnergyPricePages(EnergyPriceStore prices) {
        this.prices = prices;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/findings/{season}/price", this::show, Role.COORDINATOR);
        routes.post("/findings/{season}/price", this::set, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        int season = SeasonFindingPages.year(ctx);
        Map<String, List<String>> typed = prices.find(season)
                .map(price -> Map.of(
                        "price",
                        List.of(String.valueOf(price.perKilowattHour())),
                        "currency",
                        List.of(price.currency())))
                .orElse(Map.of());
        Respond.page(ctx, TEMPLATE, new PricePage(season, new FormReader(typed)));
    }

    private void set(Context ctx) {
        int season = SeasonFindingPages.year(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        double price = form.decimal("price", "Price of a kilowatt-hour", LEAST, MOST);
        String currency = form.requiredText("currency", "Currency", 8);
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, new PricePage(season, form));
            return;
        }
        prices.set(season, new EnergyPrice(price, currency), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, "/findings/" + season, SAY.priceKept());
    }

    private record PricePage(int year, FormReader form) {}
}
