package warmshelf.finding.season;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import warmshelf.web.Pages;
import warmshelf.web.Role;

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
        send(ctx, "sowings", out -> SeasonCsv.sowings(out, seasons.sowings(year), seasons.whereabouts()));
    }

    private void entries(Context ctx) {
        int year = SeasonFindingPages.year(ctx);
        send(ctx, "entries", out -> {
            SeasonCsv csv = SeasonCsv.entries(out);
            seasons.forEachEntry(year, csv::add);
        });
    }

    private void weeks(Context ctx) {
        int year = SeasonFindingPages.year(ctx);
        send(ctx, "weeks", out -> SeasonCsv.weeks(out, seasons.weeks(year)));
    }

    private interface Table {
        void writeTo(Writer out) throws IOException;
    }

    private static void send(Context ctx, String name, Table table) {
        ctx.contentType("text/csv; charset=utf-8")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"%s-%s.csv\"".formatted(name, ctx.pathParam("season")));
        try (Writer out = new BufferedWriter(new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8))) {
            table.writeTo(out);
        } catch (IOException gone) {
            throw new UncheckedIOException("the table could not be sent", gone);
        }
    }
}
