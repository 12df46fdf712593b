package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** The season that the group works towards: whether it is under way, and opening the next one where it is closed. */
final class SeasonPages implements Pages {
    static final String ADDRESS = "/season";
    private static final String TEMPLATE = "season/show.peb";
    private static final String YEAR = "season";
    private static final int LATEST = 2200;

    private final SeasonTurnStore turns;
    private final SeasonCountStore counts;
    private final GroupFrost frosts;

    SeasonPages(SeasonTurnStore turns, SeasonCountStore counts, GroupFrost frosts) {
        this.turns = turns;
        this.counts = counts;
        this.frosts = frosts;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.post(ADDRESS + "/open", this::open, Role.COORDINATOR);
        routes.post(ADDRESS + "/open/undo", this::takeOpeningBack, Role.COORDINATOR);
        routes.post(ADDRESS + "/name", this::rename, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(Visitor.of(ctx), null));
    }

    private void open(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        Optional<Integer> year = year(form, visitor.season() + 1);
        if (year.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(visitor, form));
            return;
        }
        int after = form.wholeNumber("after", SAY.seasonField(), 2000, LATEST);
        int opened = Decisions.doneOr(
                turns.open(form.ok() ? after : visitor.season(), year.get(), visitor.memberId()), visitor.units());
        Notice.leaveUndo(ctx, ADDRESS + "/open/undo");
        Respond.seeOther(ctx, ADDRESS, SAY.openedNow(opened));
    }

    private void takeOpeningBack(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int closed = Decisions.doneOr(turns.takeOpeningBack(visitor.season(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, ADDRESS, SAY.closedNow(closed));
    }

    private void rename(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        Optional<Integer> year = year(form, 2000);
        if (year.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(visitor, form));
            return;
        }
        int named = Decisions.doneOr(turns.rename(visitor.season(), year.get(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, ADDRESS, SAY.renamed(named));
    }

    private static Optional<Integer> year(FormReader form, int least) {
        int year = form.year(YEAR, SAY.seasonField(), least, LATEST);
        return form.ok() ? Optional.of(year) : Optional.empty();
    }

    private SeasonPage page(Visitor visitor, @Nullable FormReader typed) {
        List<SeasonClosing> closings = turns.closings();
        int season = visitor.season();
        SeasonClosing closing = closings.stream()
                .filter(each -> each.season() == season)
                .findFirst()
                .orElse(null);
        int next = SeasonYear.after(season, visitor.today(), frosts.isSouth());
        FormReader form = typed == null
                ? new FormReader(Map.of(YEAR, List.of(Integer.toString(closing == null ? season : next))))
                : typed;
        return new SeasonPage(
                season,
                closing == null ? null : SeasonClosingLine.of(closing, visitor.zone()),
                counts.progress(season),
                next,
                frosts.lastFrost(closing == null ? season : next).orElse(""),
                form,
                closings.stream()
                        .filter(each -> each.season() != season)
                        .map(each -> SeasonClosingLine.of(each, visitor.zone()))
                        .toList(),
                counts.seasonsBefore(season).stream()
                        .filter(year -> closings.stream().noneMatch(each -> each.season() == year))
                        .toList());
    }

    /**
     * The season and those before it.
     *
     * @param closed how it was closed; null: it is under way
     * @param next the season that would follow it
     * @param lastFrost what is known of the frost of the season that comes; empty where nothing is
     * @param earlier seasons that were closed, the latest first
     * @param unclosed seasons before this one that nobody closed
     */
    private record SeasonPage(
            int season,
            @Nullable SeasonClosingLine closed,
            SeasonCountStore.SeasonProgress progress,
            int next,
            String lastFrost,
            FormReader form,
            List<SeasonClosingLine> earlier,
            List<Integer> unclosed) {}
}
