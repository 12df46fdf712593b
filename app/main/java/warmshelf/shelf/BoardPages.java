package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Aside;
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

    private static final String ALL = "all";
    private static final String STATE = "boardState";
    private static final String CHANGES = "boardChanges";

    private final ShelvingStore shelving;
    private final RetirementStore retirements;
    private final BoardStore board;
    private final Supplier<List<HeldMark>> held;
    private final Aside unplaced;
    private final BoardStateStore states;
    private final BoardChangeStore changes;
    private final Function<LocalDate, Set<UUID>> due;

    /**
     * Shows the boards.
     *
     * @param held the racks that are held now
     * @param unplaced what waits for a place, beside the racks
     * @param states tells pages that something changed since
     * @param due the sowings at which something is to do on a day
     */
    public BoardPages(
            ShelvingStore shelving,
            RetirementStore retirements,
            BoardStore board,
            Supplier<List<HeldMark>> held,
            Aside unplaced,
            BoardStateStore states,
            BoardChangeStore changes,
            Function<LocalDate, Set<UUID>> due) {
        this.changes = changes;
        this.due = due;
        this.shelving = shelving;
        this.retirements = retirements;
        this.board = board;
        this.held = held;
        this.unplaced = unplaced;
        this.states = states;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/racks", this::racks, Role.MEMBER);
        routes.get("/racks/state", this::state, Role.MEMBER);
        routes.get("/paper/racks", this::plans, Role.MEMBER);
        routes.get("/weeks", this::weeks, Role.MEMBER);
    }

    private void racks(Context ctx) {
        LocalDate today = Visitor.of(ctx).today();
        FormReader asked = new FormReader(ctx.queryParamMap());
        LocalDate day = asked.text("day").isEmpty() ? today : asked.date("day", SAY.dayField());
        refuseUnusable(asked);
        // Named before anything is read: what changes meanwhile is told rather than missed.
        Aside state = visitor -> Map.of(STATE, states.state());
        BoardChanges changed = changed(ctx);
        Map<String, Object> beside =
                Aside.of(state, unplaced, visitor -> Map.of(CHANGES, changed)).model(Visitor.of(ctx));
        List<Site> all = inUse(day, ctx);
        Board read = changed.on(
                board.read(DayStrip.from(day), WeekAhead.to(day)), day.equals(today) ? due.apply(today) : Set.of());
        Respond.page(
                ctx,
                "shelf/racks.peb",
                new WholePage(RacksPage.of(all, shown(asked, all, read, ctx), read, day, today, held.get())),
                beside);
    }

    /** Whether anything changed since the state that the page names; asked again and again, and answered without looking. */
    private void state(Context ctx) {
        String tag = "\"" + states.state() + "\"";
        ctx.header("ETag", tag);
        if (tag.equals(ctx.header("If-None-Match"))) {
            ctx.status(HttpStatus.NOT_MODIFIED);
        } else {
            ctx.json(Map.of("state", states.state()));
        }
    }

    private void plans(Context ctx) {
        FormReader asked = new FormReader(ctx.queryParamMap());
        LocalDate day = asked.text("day").isEmpty() ? Visitor.of(ctx).today() : asked.date("day", "Day");
        refuseUnusable(asked);
        List<Site> all = inUse(day, ctx);
        Board read = board.read(day, day.plusDays(1));
        Respond.page(ctx, "shelf/plans.peb", new WholePage(RackPlanPage.of(all, chosen(asked, all), read, day)));
    }

    private void weeks(Context ctx) {
        LocalDate today = Visitor.of(ctx).today();
        FormReader asked = new FormReader(ctx.queryParamMap());
        int weeks = asked.optionalWholeNumber("weeks", SAY.weeksField(), 1, MOST_WEEKS)
                .orElse(USUAL_WEEKS);
        LocalDate near = asked.text("from").isEmpty() ? before(today, weeks) : asked.date("from", SAY.firstWeekField());
        refuseUnusable(asked);
        LocalDate from = near.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        String state = states.state();
        BoardChanges changed = changed(ctx);
        List<Site> all = inUse(from, ctx);
        Board read = changed.on(board.read(from, from.plusWeeks(weeks)), Set.of());
        Respond.page(
                ctx,
                "shelf/weeks.peb",
                new WholePage(WeeksPage.of(all, shown(asked, all, read, ctx), read, from, weeks, today)),
                Map.of(STATE, state, CHANGES, changed));
    }

    /** So that of some weeks, beginning on the Monday nearest to it, a fifth is past. */
    private static LocalDate before(LocalDate today, int weeks) {
        return today.minusDays(weeks * 7L / 5).plusDays(3);
    }

    private BoardChanges changed(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        return changes.look(new BoardChangeStore.Reader(visitor.memberId(), visitor.reach()), visitor.today());
    }

    /** The sites with all that is in use on a day, theirs first who coordinate some. */
    private List<Site> inUse(LocalDate day, Context ctx) {
        return Site.theirsFirst(
                retirements.read().inUse(shelving.all(), day), Visitor.of(ctx).reach());
    }

    private static void refuseUnusable(FormReader asked) {
        if (!asked.ok()) {
            throw Refusal.of(
                    HttpStatus.BAD_REQUEST, String.join(" ", asked.problems().values()));
        }
    }

    /** Null: all sites. */
    private static @Nullable UUID shown(FormReader asked, List<Site> all, Board read, Context ctx) {
        return asked.text("site").isEmpty()
                ? OpeningSite.of(all, read, Visitor.of(ctx).called())
                : chosen(asked, all);
    }

    private static @Nullable UUID chosen(FormReader asked, List<Site> all) {
        String text = asked.text("site");
        if (text.isEmpty() || text.equals(ALL)) {
            return null;
        }
        return all.stream()
                .map(Site::id)
                .filter(id -> id.toString().equals(text))
                .findFirst()
                .orElseThrow(Refusal::notFound);
    }
}
