package warmshelf.harvest;

import static warmshelf.harvest.HarvestSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.UUID;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** How it was: one list of what a member planted out, their own or taken from others, answered in a minute. */
public final class HarvestPages implements Pages {
    private static final String TEMPLATE = "harvest/mine.peb";

    private final HarvestStore harvests;
    private final CropCatalogue crops;

    public HarvestPages(HarvestStore harvests, CropCatalogue crops) {
        this.harvests = harvests;
        this.crops = crops;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/harvest", this::show, Role.MEMBER);
        routes.post("/harvest", this::keep, Role.MEMBER);
    }

    private void show(Context ctx) {
        List<HarvestStore.PlantedOut> mine = mine(ctx);
        List<UUID> ids = mine.stream().map(HarvestStore.PlantedOut::sowingId).toList();
        Respond.page(
                ctx,
                TEMPLATE,
                page(mine, HarvestForm.filled(harvests.notes(Visitor.of(ctx).memberId(), ids))));
    }

    private void keep(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        HarvestForm form = new HarvestForm(ctx.formParamMap(), visitor.today());
        List<HarvestStore.PlantedOut> mine = mine(ctx);
        List<HarvestNote> notes = form.notes(mine);
        if (!form.reader().ok()) {
            Respond.again(ctx, TEMPLATE, page(mine, form.reader()));
            return;
        }
        harvests.keep(notes, visitor.memberId());
        Respond.seeOther(ctx, "/harvest", SAY.kept());
    }

    private List<HarvestStore.PlantedOut> mine(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        return harvests.plantedOut(visitor.memberId(), visitor.season());
    }

    private HarvestPage page(List<HarvestStore.PlantedOut> mine, FormReader form) {
        return new HarvestPage(
                mine.stream().map(this::line).toList(),
                form,
                HarvestAnswer.choices(HarvestAnswer.Again.values()),
                HarvestAnswer.choices(HarvestAnswer.Amount.values()),
                HarvestAnswer.choices(HarvestAnswer.Taste.values()),
                mine.isEmpty() ? SAY.nothingPlantedOut() : "");
    }

    private Line line(HarvestStore.PlantedOut sowing) {
        String crop = crops.find(sowing.cropId()).map(Crop::name).orElse(sowing.cropId());
        return new Line(
                sowing.sowingId().toString(),
                sowing.variety().isEmpty() ? crop : crop + " · " + sowing.variety(),
                sowing.season());
    }

    /** A sowing to say something of. */
    private record Line(String id, String title, int season) {}

    /** @param empty why there is nothing to ask; empty where there is */
    private record HarvestPage(
            List<Line> lines,
            FormReader form,
            List<Choice> again,
            List<Choice> amounts,
            List<Choice> tastes,
            String empty) {}
}
