package warmshelf.season;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** A season that is over, to be read: its figures as they were, its sowings, and the ways to its boards and findings. */
final class PastSeasonPages implements Pages {
    private static final String ADDRESS = SeasonPages.ADDRESS + "/{season}";

    private final SeasonTurnStore turns;
    private final SeasonCountStore counts;
    private final PastSowingStore sowings;

    PastSeasonPages(SeasonTurnStore turns, SeasonCountStore counts, PastSowingStore sowings) {
        this.turns = turns;
        this.counts = counts;
        this.sowings = sowings;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int season = year(ctx);
        FormReader typed = new FormReader(ctx.queryParamMap());
        SeasonClosing closing = turns.closing(season).orElse(null);
        if (season == visitor.season() ? closing == null : isUnknown(season, closing)) {
            throw Refusal.notFound();
        }
        boolean own = typed.text("whose").equals("mine");
        String words = typed.text("words");
        PastSowingStore.Asked asked =
                new PastSowingStore.Asked(season, words, own ? visitor.memberId() : null, pageNumber(typed));
        PastSowingStore.Found found = sowings.find(asked);
        Respond.page(
                ctx,
                "season/past.peb",
                new PastPage(
                        season,
                        closing == null ? null : SeasonClosingLine.of(closing, visitor.zone()),
                        words,
                        own,
                        asked.page(),
                        found.all(),
                        found.pages(),
                        found.lines(),
                        sowings.weeks(season).orElse(null)));
    }

    private boolean isUnknown(int season, @Nullable SeasonClosing closing) {
        return closing == null && !counts.seasonsBefore(season + 1).contains(season);
    }

    /** What is no number is taken for the first page: the list is the same, shown from its start. */
    private static int pageNumber(FormReader typed) {
        String text = typed.text("page");
        return text.matches("[1-9][0-9]{0,5}") ? Integer.parseInt(text) : 1;
    }

    private static int year(Context ctx) {
        String text = ctx.pathParam("season");
        if (!text.matches("2[01][0-9]{2}")) {
            throw Refusal.notFound();
        }
        return Integer.parseInt(text);
    }

    /**
     * A season that is over.
     *
     * @param closed how it was closed; null: it was not
     * @param words what the sowings are searched for
     * @param own whether only the reader's own are shown
     * @param page of the list, from 1, of {@code pages}
     * @param all how many were found
     * @param weeks the days on which something lay on a place; null: nothing did
     */
    private record PastPage(
            int season,
            @Nullable SeasonClosingLine closed,
            String words,
            boolean own,
            int page,
            int all,
            int pages,
            List<PastSowingStore.Line> lines,
            PastSowingStore.@Nullable Weeks weeks) {}
}
