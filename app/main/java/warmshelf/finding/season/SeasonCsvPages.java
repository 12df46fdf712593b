package warmshelf.finding.season;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.web.Pages;
import warmshelf.web.Role;
import warmshelf.web.TableAnswer;

/** A season's tables as files, written as they are read. */
public final class SeasonCsvPages implements Pages {
    private final SeasonStore seasons;

    public SeasonCsvPages(SeasonStore seasons) {
        this.seasons = seasons;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/findings/{season}/sowings.csv", this::sowings, Role.MEMBER);
        routes.get("/findings/{season}/entries.csv", this::entries, Role.MEMBER);
        routes.get("/findings/{season}/weeks.csv", this::weeks, Role.MEMBER);
    }

    private void sowings(Context ctx) {
        int year = SeasonFindingPages.year(ctx);
        send(
                ctx,
                "sowings",
                (out, shape) -> SeasonCsv.sowings(out, shape, seasons.sowings(year), seasons.whereabouts()));
    }

    private void entries(Context ctx) {
        int year = SeasonFindingPages.year(ctx);
        send(ctx, "entries", (out, shape) -> {
            SeasonCsv csv = SeasonCsv.entries(out, shape);
            seasons.forEachEntry(year, csv::add);
        });
    }

    private void weeks(Context ctx) {
        int year = SeasonFindingPages.year(ctx);
        send(ctx, "weeks", (out, shape) -> SeasonCsv.weeks(out, shape, seasons.weeks(year)));
    }

    private static void send(Context ctx, String name, TableAnswer.Table table) {
        TableAnswer.send(ctx, "%s-%s".formatted(name, ctx.pathParam("season")), table);
    }
}
