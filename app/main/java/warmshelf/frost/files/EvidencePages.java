package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.web.WholePage;

/** What the group has brought in about frost, and the stations that count. */
final class EvidencePages implements Pages {
    private static final int LONGEST_SEARCH = 80;

    private final ImportStore imports;
    private final StationStore stations;
    private final Clock clock;

    EvidencePages(ImportStore imports, StationStore stations, Clock clock) {
        this.imports = imports;
        this.stations = stations;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/frost/evidence", this::show, Role.MEMBER);
        routes.post("/frost/stations/{id}/removal", this::removeStation, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        String given = ctx.queryParam("q");
        String text = given == null ? "" : StationCodes.shortened(given.strip(), LONGEST_SEARCH);
        int number = pageNumber(ctx);
        Respond.page(
                ctx,
                "frost/evidence.peb",
                new WholePage(EvidencePage.of(
                        imports.latest(),
                        stations.list(text, number),
                        stations.count(),
                        text,
                        number,
                        clock.instant(),
                        Visitor.of(ctx).zone())));
    }

    private static int pageNumber(Context ctx) {
        String number = ctx.queryParam("page");
        // An address with a page that cannot be shows the first one rather than an error.
        return number != null && number.matches("\\d{1,4}") ? Integer.parseInt(number) : 0;
    }

    private void removeStation(Context ctx) {
        if (!stations.removeTyped(Respond.id(ctx, "id"), Visitor.of(ctx).memberId())) {
            throw Refusal.conflict(SAY.stationGone());
        }
        Respond.seeOther(ctx, "/frost/evidence", SAY.stationRemoved());
    }
}
