package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Countries;

/** Corrections for all postcodes that begin alike: coordinators make and end them, members read them. */
final class AreaPages implements Pages {
    private static final String TEMPLATE = "frost/areas.peb";
    private static final String ADDRESS = "/frost/areas";

    private final CorrectionStore corrections;

    AreaPages(CorrectionStore corrections) {
        this.corrections = corrections;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::list, Role.MEMBER);
        routes.post(ADDRESS, this::correct, Role.COORDINATOR);
        routes.post("/frost/areas/{id}/end", this::end, Role.COORDINATOR);
    }

    private void list(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(CorrectionForm.blank(Visitor.of(ctx).country())));
    }

    private AreasPage page(CorrectionForm form) {
        return new AreasPage(
                form,
                ChangeFields.HOWS,
                ChangeFields.WAYS,
                Countries.byName(),
                corrections.holding().stream()
                        .filter(each -> each.area() instanceof Area.Postcodes)
                        .map(CorrectionLine::of)
                        .toList(),
                corrections.endedOfAreas().stream().map(CorrectionLine::of).toList());
    }

    /**
     * The areas with a correction.
     *
     * @param hows days later or earlier, or the dates themselves
     * @param ways later or earlier
     * @param holding those that count
     */
    private record AreasPage(
            CorrectionForm form,
            List<Choice> hows,
            List<Choice> ways,
            List<Choice> countries,
            List<CorrectionLine> holding,
            List<CorrectionLine> ended) {}

    private void correct(Context ctx) {
        CorrectionForm form = CorrectionForm.ofArea(ctx.formParamMap());
        Optional<CorrectionForm.Correction> given = form.correction();
        if (given.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(form));
            return;
        }
        CorrectionForm.Correction correction = given.get();
        corrections.correct(
                correction.area(),
                correction.change(),
                correction.reason(),
                Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, ADDRESS, SAY.areaCorrectionHolds(CorrectionWords.of(correction.area())));
    }

    private void end(Context ctx) {
        if (!corrections.endOfArea(Respond.id(ctx, "id"), Visitor.of(ctx).memberId())) {
            throw Refusal.notFound(SAY.noCorrectionOfArea());
        }
        Respond.seeOther(ctx, ADDRESS, SAY.correctionEnded());
    }
}
