package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import warmshelf.frost.FrostNote;
import warmshelf.frost.Postcodes;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Typing in twelve monthly mean minima of a place, with a look at the dates that come of it before they are kept. */
final class MonthlyPages implements Pages {
    private static final String TEMPLATE = "frost/months.peb";

    private final StationStore stations;

    MonthlyPages(StationStore stations) {
        this.stations = stations;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(
                "/frost/months",
                ctx -> Respond.page(ctx, TEMPLATE, MonthsPage.of(MonthsForm.blank(), Visitor.of(ctx))),
                Role.COORDINATOR);
        routes.post("/frost/months", this::add, Role.COORDINATOR);
    }

    /** @param measured how far off dates from monthly means were found to be */
    private record MonthsPage(MonthsForm form, List<MonthsForm.MonthField> months, String measured) {
        static MonthsPage of(MonthsForm form, Visitor visitor) {
            boolean home = visitor.country().equals(Postcodes.UNITED_STATES);
            return new MonthsPage(
                    form,
                    MonthsForm.months(),
                    new FrostNote.MonthlyError(form.inUnitedStates().orElse(home)).words());
        }
    }

    private void add(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        MonthsForm form = MonthsForm.of(ctx.formParamMap(), visitor.units());
        if (form.station().isEmpty()) {
            Respond.again(ctx, TEMPLATE, MonthsPage.of(form, visitor));
            return;
        }
        if (!form.isToKeep()) {
            Respond.page(ctx, TEMPLATE, MonthsPage.of(form, visitor));
            return;
        }
        stations.addMonthly(form.station().get(), form.source(), visitor.memberId());
        Respond.seeOther(ctx, "/frost/evidence", SAY.placeCounts());
    }
}
