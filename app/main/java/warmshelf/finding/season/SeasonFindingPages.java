package warmshelf.finding.season;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.harvest.HarvestStore;
import warmshelf.harvest.VarietyHarvest;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** A season's findings, and each crop's curves. */
public final class SeasonFindingPages implements Pages {
    private final SeasonStore seasons;
    private final CropCatalogue crops;
    private final HarvestStore harvests;
    private final EnergyPriceStore prices;

    public SeasonFindingPages(
            SeasonStore seasons, CropCatalogue crops, HarvestStore harvests, EnergyPriceStore prices) {
        this.seasons = seasons;
        this.crops = crops;
        this.harvests = harvests;
        this.prices = prices;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/findings", this::current, Role.MEMBER);
        routes.get("/findings/{season}", this::season, Role.MEMBER);
        routes.get("/findings/{season}/crops/{crop}", this::crop, Role.MEMBER);
    }

    private void current(Context ctx) {
        show(ctx, Visitor.of(ctx).season());
    }

    private void season(Context ctx) {
        show(ctx, year(ctx));
    }

    private void show(Context ctx, int year) {
        List<Integer> known = seasons.seasons();
        if (year != Visitor.of(ctx).season() && !known.contains(year)) {
            throw Refusal.notFound();
        }
        Respond.page(
                ctx,
                "finding/season/show.peb",
                SeasonFindingPage.of(seasons.find(year), known, grown(year), prices.find(year)));
    }

    private List<SeasonFindingPage.GrownLine> grown(int year) {
        return VarietyHarvest.of(harvests.ofSeason(year)).stream()
                .map(said -> new SeasonFindingPage.GrownLine(
                        crops.find(said.cropId()).map(Crop::name).orElse(said.cropId()),
                        said.variety(),
                        said.growers(),
                        said.words()))
                .toList();
    }

    private void crop(Context ctx) {
        int year = year(ctx);
        Crop crop = crops.find(ctx.pathParam("crop")).orElseThrow(Refusal::notFound);
        CropCurves.By by = by(ctx);
        List<SeasonSowing> ofCrop = seasons.sowings(year).stream()
                .filter(each -> each.sowing().crop().id().equals(crop.id()))
                .toList();
        CropCurves curves = CropCurves.of(ofCrop, by, Visitor.of(ctx).units());
        Respond.page(ctx, "finding/season/crop.peb", CropCurvesPage.of(year, crop, by, curves));
    }

    /** An unknown word is taken for none: the page is the same, put together otherwise. */
    private static CropCurves.By by(Context ctx) {
        String word = ctx.queryParam("by");
        return Arrays.stream(CropCurves.By.values())
                .filter(by -> by.word().equals(word))
                .findFirst()
                .orElse(CropCurves.By.METHOD);
    }

    static int year(Context ctx) {
        String text = ctx.pathParam("season");
        if (!text.matches("20[0-9]{2}")) {
            throw Refusal.notFound();
        }
        return Integer.parseInt(text);
    }
}
