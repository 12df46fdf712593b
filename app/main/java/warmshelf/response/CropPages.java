package warmshelf.response;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.crop.OwnCrop;
import warmshelf.crop.SeenEmergence;
import warmshelf.crop.TemperatureResponse;
import warmshelf.crop.Variety;
import warmshelf.seed.Spelling;
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
    private static final int LONGEST_SEARCH = 80;

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

    /** Crops that stand a frost alike. */
    public record Alike(String words, List<Line> lines) {}

    /**
     * The list.
     *
     * @param text what was searched for, or empty
     * @param found what fits it
     * @param seen crops that the group has sown, where nothing is searched for
     * @param all every crop, by how it stands frost, where nothing is searched for
     */
    private record ListPage(String text, List<Line> found, List<Line> seen, List<Alike> all) {}

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
        String asked = ctx.queryParam("q");
        Respond.page(ctx, "response/list.peb", listPage(lines, asked == null ? "" : asked.strip()));
    }

    private static ListPage listPage(List<Line> lines, String asked) {
        String text = asked.length() <= LONGEST_SEARCH ? asked : asked.substring(0, LONGEST_SEARCH);
        if (!text.isEmpty()) {
            List<Line> found =
                    lines.stream().filter(line -> fits(text, line.crop())).toList();
            return new ListPage(text, found, List.of(), List.of());
        }
        return new ListPage(
                "",
                List.of(),
                lines.stream().filter(line -> line.sowings() > 0).toList(),
                Arrays.stream(Hardiness.values())
                        .map(hardiness -> new Alike(
                                hardiness.words(),
                                lines.stream()
                                        .filter(line -> line.crop().hardiness() == hardiness)
                                        .toList()))
                        .filter(alike -> !alike.lines().isEmpty())
                        .toList());
    }

    private static boolean fits(String text, Crop crop) {
        return (crop.name() + "\n" + crop.species()).toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT))
                || Spelling.meant(text, crop.name())
                || Spelling.meant(text, crop.species());
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
                        SourceAgreement.of(crop),
                        new SourceWords(units).all(crop),
                        crops.varieties(crop.id()).stream()
                                .map(variety ->
                                        new KnownVariety(variety, CropFacts.harvest(Optional.of(variety.maturity()))))
                                .toList()));
    }
}
