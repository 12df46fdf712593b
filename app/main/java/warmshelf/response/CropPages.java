package warmshelf.response;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.OwnCrop;
import warmshelf.crop.SeenEmergence;
import warmshelf.crop.TemperatureResponse;
import warmshelf.crop.Variety;
import warmshelf.sowing.EmergenceStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStore;
import warmshelf.timeline.Slips;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Units;

/** How each crop's seed answers to temperature: as published, and as the group saw it. */
public final class CropPages implements Pages {
    private final CropCatalogue crops;
    private final EmergenceStore emergence;
    private final SowingStore sowings;

    public CropPages(CropCatalogue crops, EmergenceStore emergence, SowingStore sowings) {
        this.crops = crops;
        this.emergence = emergence;
        this.sowings = sowings;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/crops", this::all, Role.MEMBER);
        routes.get("/crops/{id}", this::one, Role.MEMBER);
    }

    /** A crop of the list, with the number of sowings seen. */
    public record Line(Crop crop, TemperatureResponse response, int sowings, boolean own) {}

    private record ListPage(List<Line> lines) {}

    /** A variety of which more is known than of its crop. */
    public record KnownVariety(Variety variety, String harvest) {}

    private void all(Context ctx) {
        Map<String, List<SeenEmergence>> seen = emergence.seen();
        List<Line> lines = crops.all().stream()
                .map(crop -> new Line(
                        crop,
                        crops.responseOf(crop),
                        seen.getOrDefault(crop.id(), List.of()).size(),
                        crops.written(crop.id()).filter(OwnCrop::kept).isPresent()))
                .toList();
        Respond.page(ctx, "response/list.peb", new ListPage(lines));
    }

    private void one(Context ctx) {
        Crop crop = crops.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
        List<SeenEmergence> seen = emergence.seen().getOrDefault(crop.id(), List.of());
        Map<UUID, Sowing> of = sowings
                .all(seen.stream().map(SeenEmergence::sowingId).toList())
                .stream()
                .collect(Collectors.toMap(Sowing::id, Function.identity()));
        Units units = Visitor.of(ctx).units();
        TemperatureResponse response = crops.responseOf(crop);
        Optional<OwnCrop> own = crops.written(crop.id()).filter(OwnCrop::kept);
        Respond.page(
                ctx,
                "response/show.peb",
                new CropDetailPage(
                        CropPage.of(crop, response, seen, of, units),
                        response.disagreements().stream()
                                .map(each -> ReprintWords.of(each, units))
                                .toList(),
                        Slips.insteadOfSowing(crop, units).orElse(""),
                        own.orElse(null),
                        own.map(written -> written.at()
                                        .atZoneSameInstant(Visitor.of(ctx).zone())
                                        .toLocalDate())
                                .orElse(null),
                        crops.reference(crop.id()).orElse(null),
                        CropFacts.of(crop, own.flatMap(written -> crops.reference(crop.id())), units),
                        SeasonLine.of(crop, units),
                        crops.hazardClaims(crop.id()).stream()
                                .map(HazardLine::of)
                                .toList(),
                        new SourceWords(units).all(crop),
                        crops.varieties(crop.id()).stream()
                                .map(variety ->
                                        new KnownVariety(variety, CropFacts.harvest(Optional.of(variety.maturity()))))
                                .toList()));
    }
}
