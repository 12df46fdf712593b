package warmshelf.guide;

import static warmshelf.guide.GuideSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Units;

/** How each step is done, with its sources; for one crop, where one is named. */
public final class GuidePages implements Pages {
    private final CropCatalogue crops;

    public GuidePages(CropCatalogue crops) {
        this.crops = crops;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/how-to", this::all, Role.MEMBER);
        routes.get("/how-to/{step}", this::one, Role.MEMBER);
    }

    @Override
    public Map<String, Object> forTemplates(Units units) {
        return Advice.in(units).forTemplates();
    }

    private void all(Context ctx) {
        Optional<Crop> crop = crop(ctx);
        keepable(ctx);
        Respond.page(
                ctx,
                "guide/list.peb",
                new GuidePage(
                        Topic.all(),
                        crops.all(),
                        crop.map(Crop::id).orElse(""),
                        crop.map(Crop::name).orElse(""),
                        query(crop)));
    }

    /**
     * All how-tos.
     *
     * @param crop the id of the crop asked for, or empty
     * @param query what addresses of how-tos carry on of it, or empty
     */
    private record GuidePage(List<Topic> topics, List<Crop> crops, String crop, String cropName, String query) {}

    private void one(Context ctx) {
        Topic topic = Topic.find(ctx.pathParam("step")).orElseThrow(() -> Refusal.notFound(SAY.noSuchArticle()));
        Optional<Crop> crop = crop(ctx);
        Units units = Visitor.of(ctx).units();
        Advice advice = Advice.in(units);
        Article article = Article.of(topic, advice);
        ArticlePage page = new ArticlePage(
                topic,
                crop.map(known -> article.of(known, topic.handled())).orElse(article),
                crop.map(known -> CropAtStep.of(topic, known, crops.responseOf(known), units))
                        .orElse(null),
                query(crop));
        keepable(ctx);
        Respond.page(ctx, "guide/show.peb", page, advice.forArticles());
    }

    /**
     * One how-to.
     *
     * @param facts of the crop asked for at this step; null: of none
     * @param query what addresses of how-tos carry on of the crop, or empty
     */
    private record ArticlePage(
            Topic topic, Article article, @Nullable CropAtStep facts, String query) {}

    /** Lets the worker on a phone keep the page for a cellar without signal, as this member's. */
    private static void keepable(Context ctx) {
        ctx.header("X-Warmshelf-Member", Visitor.of(ctx).memberId().toString());
    }

    /** The crop asked for; none when the address names none. */
    private Optional<Crop> crop(Context ctx) {
        String id = ctx.queryParam("crop");
        if (id == null || id.isBlank()) {
            return Optional.empty();
        }
        return Optional.of(crops.find(id).orElseThrow(() -> Refusal.notFound(SAY.noSuchCrop(id))));
    }

    private static String query(Optional<Crop> crop) {
        return crop.map(known -> "?crop=" + known.id()).orElse("");
    }
}
