package warmshelf.finding.prediction;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import warmshelf.sowing.EndedSowing;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.TableAnswer;
import warmshelf.web.Visitor;

/** What was told, against what was seen; as a page and as tables. */
public final class PredictionPages implements Pages {
    private final PredictionReader reader;

    public PredictionPages(PredictionReader reader) {
        this.reader = reader;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/findings/predictions", this::show, Role.MEMBER);
        routes.get("/findings/predictions/emergence.csv", this::emergence, Role.MEMBER);
        routes.get("/findings/predictions/plants.csv", this::plants, Role.MEMBER);
        routes.get("/findings/predictions/planting-out.csv", this::plantingOut, Role.MEMBER);
        routes.get("/findings/predictions/frost.csv", this::frost, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<EndedSowing> ended = reader.ended();
        Respond.page(
                ctx,
                "finding/prediction/show.peb",
                new PredictionPage(
                        PredictionPage.Emergence.of(reader.emergence()),
                        PredictionPage.Plants.of(reader.plants(ended)),
                        PredictionPage.PlantingOut.of(reader.plantingOut(ended)),
                        PredictionPage.Frost.of(
                                reader.frost(visitor.memberId(), visitor.coordinator()), visitor.units())));
    }

    private void emergence(Context ctx) {
        TableAnswer.send(ctx, "emergence", (out, shape) -> PredictionCsv.emergence(out, shape, reader.emergence()));
    }

    private void plants(Context ctx) {
        TableAnswer.send(
                ctx, "plants", (out, shape) -> PredictionCsv.plants(out, shape, reader.plants(reader.ended())));
    }

    private void plantingOut(Context ctx) {
        TableAnswer.send(
                ctx,
                "planting-out",
                (out, shape) -> PredictionCsv.plantingOut(out, shape, reader.plantingOut(reader.ended())));
    }

    private void frost(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        TableAnswer.send(
                ctx,
                "frost",
                (out, shape) ->
                        PredictionCsv.frost(out, shape, reader.frost(visitor.memberId(), visitor.coordinator())));
    }
}
