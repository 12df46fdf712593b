package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

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
        Visitor visitor = Visitor.of(ctx);
        Respond.page(ctx, TEMPLATE, page(visitor, kept(visitor)));
    }

    /** The three forms of the page. */
    private record Forms(PointForm point, CorrectionForm correction, RiskForm risk) {
        Forms with(PointForm other) {
            return new Forms(other, correction, risk);
        }

        Forms with(CorrectionForm other) {
            return new Forms(point, other, risk);
        }

        Forms with(RiskForm other) {
            return new Forms(point, correction, other);
        }
    }

    /** The forms as they are kept, with nothing typed. */
    private Forms kept(Visitor visitor) {
        return new Forms(
                PointForm.showing(gardens.versioned(visitor.memberId()), visitor.units()),
                CorrectionForm.blank(visitor.country()),
                RiskForm.showing(risks.of(visitor.memberId())));
    }

    private GardenPage page(Visitor visitor, Forms forms) {
        Optional<GardenStore.Versioned> point = gardens.versioned(visitor.memberId());
        Area.Garden garden = new Area.Garden(visitor.memberId());
        List<FrostCorrection> holding = corrections.holding();
        return new GardenPage(
                forms.point(),
                forms.correction(),
                forms.risk(),
                point.map(known -> Height.words(known.point(), visitor.units())).orElse(null),
                point.map(GardenStore.Versioned::version).orElse(0),
                Height.unit(visitor.units()),
                ChangeFields.HOWS,
                ChangeFields.WAYS,
                holding.stream()
                        .filter(each -> each.area().equals(garden))
                        .map(CorrectionLine::of)
                        .findFirst()
                        .orElse(null),
                Corrections.holding(holding, visitor.memberId(), visitor.country(), visitor.postcode())
                        .map(CorrectionLine::of)
                        .orElse(null),
                corrections.ended(garden).stream().map(CorrectionLine::of).toList());
    }

    private void setPoint(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID member = visitor.memberId();
        PointForm form = PointForm.of(ctx.formParamMap(), visitor.units());
        if (form.point().isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(visitor, kept(visitor).with(form)));
            return;
        }
        Decision<Integer> decision = gardens.setPoint(member, form.point().get(), form.version(), member);
        if (decision instanceof Decision.Overtaken) {
            form.overtaken(gardens.versioned(member), visitor.units());
            Respond.overtaken(ctx, TEMPLATE, page(visitor, kept(visitor).with(form)));
            return;
        }
        Decisions.doneOr(decision, visitor.units());
        Respond.seeOther(ctx, ADDRESS, SAY.pointKept());
    }

    private void clearPoint(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID member = visitor.memberId();
        // what is no version is none, and none was shown where a point can be cleared
        int version = new FormReader(ctx.formParamMap()).wholeNumber("version", "Version", 0, Integer.MAX_VALUE);
        Decisions.doneOr(gardens.clearPoint(member, version, member), visitor.units());
        Respond.seeOther(ctx, ADDRESS, SAY.pointCleared());
    }

    private void correct(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID member = visitor.memberId();
        CorrectionForm form = CorrectionForm.ofGarden(ctx.formParamMap(), new Area.Garden(member));
        Optional<CorrectionForm.Correction> given = form.correction();
        if (given.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(visitor, kept(visitor).with(form)));
            return;
        }
        corrections.correct(
                given.get().area(), given.get().change(), given.get().reason(), member);
        Respond.seeOther(ctx, ADDRESS, SAY.correctionHolds());
    }

    private void endCorrection(Context ctx) {
        UUID member = Visitor.of(ctx).memberId();
        if (!corrections.endOfGarden(Respond.id(ctx, "id"), member, member)) {
            throw Refusal.notFound(SAY.noCorrectionOfGarden());
        }
        Respond.seeOther(ctx, ADDRESS, SAY.correctionEnded());
    }

    private void accept(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID member = visitor.memberId();
        RiskForm form = RiskForm.of(ctx.formParamMap());
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, page(visitor, kept(visitor).with(form)));
            return;
        }
        risks.set(member, form.risks(), member);
        Respond.seeOther(ctx, ADDRESS, SAY.chancesKept());
    }
}
