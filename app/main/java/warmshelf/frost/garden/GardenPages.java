package warmshelf.frost.garden;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** What members say of frost in their own garden: its exact point, a correction, and the chances they accept. */
final class GardenPages implements Pages {
    private static final String TEMPLATE = "frost/garden.peb";
    private static final String ADDRESS = "/frost/garden";

    private final GardenStore gardens;
    private final CorrectionStore corrections;
    private final AcceptedRiskStore risks;

    GardenPages(GardenStore gardens, CorrectionStore corrections, AcceptedRiskStore risks) {
        this.gardens = gardens;
        this.corrections = corrections;
        this.risks = risks;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.post("/frost/garden/point", this::setPoint, Role.MEMBER);
        routes.post("/frost/garden/no-point", this::clearPoint, Role.MEMBER);
        routes.post("/frost/garden/corrections", this::correct, Role.MEMBER);
        routes.post("/frost/garden/corrections/{id}/end", this::endCorrection, Role.MEMBER);
        routes.post("/frost/garden/risks", this::accept, Role.MEMBER);
    }

    private void show(Context ctx) {
        ctx.render(TEMPLATE, model(Visitor.of(ctx)));
    }

    private Map<String, Object> model(Visitor visitor) {
        Optional<GardenStore.Versioned> point = gardens.versioned(visitor.memberId());
        Area.Garden garden = new Area.Garden(visitor.memberId());
        List<FrostCorrection> holding = corrections.holding();
        Map<String, Object> model = new HashMap<>();
        model.put("pointForm", PointForm.showing(point, visitor.units()));
        model.put(
                "point",
                point.map(known -> Height.words(known.point(), visitor.units())).orElse(null));
        model.put("version", point.map(GardenStore.Versioned::version).orElse(0));
        model.put("heightUnit", Height.unit(visitor.units()));
        model.put("form", CorrectionForm.blank(visitor.country()));
        model.put("hows", ChangeFields.HOWS);
        model.put("ways", ChangeFields.WAYS);
        model.put(
                "own",
                holding.stream()
                        .filter(each -> each.area().equals(garden))
                        .map(CorrectionLine::of)
                        .findFirst()
                        .orElse(null));
        model.put(
                "holding",
                Corrections.holding(holding, visitor.memberId(), visitor.country(), visitor.postcode())
                        .map(CorrectionLine::of)
                        .orElse(null));
        model.put(
                "ended",
                corrections.ended(garden).stream().map(CorrectionLine::of).toList());
        model.put("riskForm", RiskForm.showing(risks.of(visitor.memberId())));
        return model;
    }

    private void again(Context ctx, HttpStatus status, String name, Object form) {
        Map<String, Object> model = model(Visitor.of(ctx));
        model.put(name, form);
        ctx.status(status).render(TEMPLATE, model);
    }

    private void setPoint(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID member = visitor.memberId();
        PointForm form = PointForm.of(ctx.formParamMap(), visitor.units());
        if (form.point().isEmpty()) {
            again(ctx, HttpStatus.UNPROCESSABLE_CONTENT, "pointForm", form);
            return;
        }
        if (!gardens.setPoint(member, form.point().get(), form.version(), member)) {
            form.overtaken(gardens.versioned(member), visitor.units());
            again(ctx, HttpStatus.CONFLICT, "pointForm", form);
            return;
        }
        Respond.seeOther(ctx, ADDRESS, "The point of your garden is kept.");
    }

    private void clearPoint(Context ctx) {
        UUID member = Visitor.of(ctx).memberId();
        FormReader form = new FormReader(ctx.formParamMap());
        int version = form.wholeNumber("version", "Version", 0, Integer.MAX_VALUE);
        if (!form.ok() || !gardens.clearPoint(member, version, member)) {
            throw Refusal.conflict("The point was changed or cleared meanwhile, so nothing was done."
                    + " Go back, load the page again, and look at it as it is now.");
        }
        Respond.seeOther(ctx, ADDRESS, "The point is cleared; your postcode counts again.");
    }

    private void correct(Context ctx) {
        UUID member = Visitor.of(ctx).memberId();
        CorrectionForm form = CorrectionForm.ofGarden(ctx.formParamMap(), new Area.Garden(member));
        Optional<CorrectionForm.Correction> given = form.correction();
        if (given.isEmpty()) {
            again(ctx, HttpStatus.UNPROCESSABLE_CONTENT, "form", form);
            return;
        }
        corrections.correct(
                given.get().area(), given.get().change(), given.get().reason(), member);
        Respond.seeOther(ctx, ADDRESS, "Your correction holds from now on.");
    }

    private void endCorrection(Context ctx) {
        UUID member = Visitor.of(ctx).memberId();
        if (!corrections.endOfGarden(Respond.id(ctx, "id"), member, member)) {
            throw Refusal.notFound("Your garden has no such correction that still holds.");
        }
        Respond.seeOther(ctx, ADDRESS, "The correction has ended.");
    }

    private void accept(Context ctx) {
        UUID member = Visitor.of(ctx).memberId();
        RiskForm form = RiskForm.of(ctx.formParamMap());
        if (!form.ok()) {
            again(ctx, HttpStatus.UNPROCESSABLE_CONTENT, "riskForm", form);
            return;
        }
        risks.set(member, form.risks(), member);
        Respond.seeOther(ctx, ADDRESS, "The chances you accept are kept. New plans use them.");
    }
}
