package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.web.WholePage;
import warmshelf.words.FormReader;

/** The racks on a day, and the weeks by place; reading only: moving is the room stay. */
public final class BoardPages implements Pages {
    private static final int USUAL_WEEKS = 8;
    private static final int MOST_WEEKS = 52;

    private final ShelvingStore shelving;
    private final BoardStore board;
    private final Supplier<List<HeldMark>> held;

    /** @param held the racks that are held now */
    public BoardPages(ShelvingStore shelving, BoardStore board, Supplier<List<HeldMark>> held) {
        this.shelving = shelving;
        this.board = board;
        this.held = held;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/racks", this::racks, Role.MEMBER);
        routes.get("/paper/racks", this::plans, Role.MEMBER);
        routes.get("/weeks", this::weeks, Role.MEMBER);
    }

    private void racks(Context ctx) {
        LocalDate today = Visitor.of(ctx).today();
        FormReader asked = new FormReader(ctx.queryParamMap());
        LocalDate day = asked.text("day").isEmpty() ? today : asked.date("day", SAY.dayField());
        refuseUnusable(asked);
        List<Site> all = shelving.all();
        Board read = board.read(DayStrip.from(day), DayStrip.to(day));
        Respond.page(
                ctx,
                "shelf/racks.peb",
                new WholePage(RacksPage.of(all, chosen(asked, all), read, day, today, held.get())));
    }

    private void plans(Context ctx) {
        FormReader asked = new FormReader(ctx.queryParamMap());
        LocalDate day = asked.text("day").isEmpty() ? Visitor.of(ctx).today() : asked.date("day", "Day");
        refuseUnusable(asked);
        List<Site> all = shelving.all();
        Board read = board.read(day, day.plusDays(1));
        Respond.page(ctx, "shelf/plans.peb", new WholePage(RackPlanPage.of(all, chosen(asked, all), read, day)));
    }

    private void weeks(Context ctx) {
        LocalDate today = Visitor.of(ctx).today();
        FormReader asked = new FormReader(ctx.queryParamMap());
        LocalDate near = asked.text("from").isEmpty() ? today.minusWeeks(1) : asked.date("from", SAY.firstWeekField());
        int weeks = asked.optionalWholeNumber("weeks", SAY.weeksField(), 1, MOST_WEEKS)
                .orElse(USUAL_WEEKS);
        refuseUnusable(asked);
        LocalDate from = near.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        List<Site> all = shelving.all();
        Board read = board.read(from, from.plusWeeks(weeks));
        Respond.page(
                ctx, "shelf/weeks.peb", new WholePage(WeeksPage.of(all, chosen(asked, all), read, from, weeks, today)));
    }

    private static void refuseUnusable(FormReader asked) {
        if (!asked.ok()) {
            throw Refusal.of(
                    HttpStatus.BAD_REQUEST, String.join(" ", asked.problems().values()));
        }
    }

    private static @Nullable UUID chosen(FormReader asked, List<Site> all) {
        String text = asked.text("site");
        if (text.isEmpty()) {
            return null;
        }
        return all.stream()
                .map(Site::id)
                .filter(id -> id.toString().equals(text))
                .findFirst()
                .orElseThrow(Refusal::notFound);
    }
}
