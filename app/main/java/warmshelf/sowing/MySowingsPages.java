package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.timeline.SeasonPicture;
import warmshelf.timeline.TimelineStep;
import warmshelf.web.Aside;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;
import warmshelf.words.PartOfList;

/** A member's own sowings, by what is next to do. */
final class MySowingsPages implements Pages {
    private static final int THIS_WEEK = 7;

    private static final int LAST_PAGE = 100_000;

    private final HistoryStore histories;
    private final SowingPlanner planner;
    private final SowingView view;
    private final Aside aside;

    MySowingsPages(SowingStores stores, SowingView view, Aside aside) {
        this.histories = stores.histories();
        this.planner = stores.planner();
        this.view = view;
        this.aside = aside;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings", this::mine, Role.MEMBER);
    }

    /** One line of a member's list. */
    public record Line(
            Sowing sowing,
            @Nullable SpaceRequest request,
            @Nullable Stay stay,
            @Nullable TimelineStep next) {

        /** The day of what is next; null where nothing is. */
        @Nullable
        LocalDate nextOn() {
            return next == null ? null : next.ideal();
        }

        When when(LocalDate today) {
            if (sowing.stage().isOver()) {
                return When.OVER;
            }
            if (request != null && sowing.stage().isBeforeSowing() && request.state() != SpaceRequest.State.PLACED) {
                return When.WAITING;
            }
            LocalDate on = nextOn();
            if (on == null || on.isAfter(today.plusDays(THIS_WEEK))) {
                return When.LATER;
            }
            return on.isAfter(today) ? When.THIS_WEEK : When.NOW;
        }
    }

    /** When something of a sowing is next to do; what has no place yet waits for one first. */
    private enum When {
        NOW,
        THIS_WEEK,
        LATER,
        WAITING,
        OVER
    }

    private void mine(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<History> mine = histories.ofMember(visitor.memberId(), visitor.season());
        Map<When, List<Line>> lines = mine.stream()
                .map(history -> line(history, visitor))
                .sorted(Comparator.comparing(Line::nextOn, Comparator.nullsLast(Comparator.naturalOrder())))
                .collect(Collectors.groupingBy(line -> line.when(visitor.today())));
        Respond.page(
                ctx,
                "sowing/list.peb",
                new ListPage(
                        view.seedOf(mine.stream().map(History::sowing).toList()),
                        SeasonRows.of(mine).picture(planner, visitor.today()),
                        lines.getOrDefault(When.NOW, List.of()),
                        lines.getOrDefault(When.THIS_WEEK, List.of()),
                        lines.getOrDefault(When.LATER, List.of()),
                        lines.getOrDefault(When.WAITING, List.of()),
                        PartOfList.of(lines.getOrDefault(When.OVER, List.of()), finished(ctx)),
                        ctx.queryParam("finished") != null),
                aside.model(visitor));
    }

    /** Which page of those that are finished is wanted; they become ever more. */
    private static int finished(Context ctx) {
        FormReader asked = new FormReader(ctx.queryParamMap());
        int page = asked.optionalWholeNumber("finished", SAY.pageOfFinishedField(), 1, LAST_PAGE)
                .orElse(1);
        if (!asked.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", asked.problems().values()));
        }
        return page;
    }

    /**
     * A member's sowings by when something is next to do, with how each stands with its seed.
     *
     * @param overOpen whether a page of those that are finished was asked for
     */
    private record ListPage(
            Map<UUID, SeedStanding> seeds,
            @Nullable SeasonPicture season,
            List<Line> now,
            List<Line> thisWeek,
            List<Line> later,
            List<Line> waiting,
            PartOfList<Line> over,
            boolean overOpen) {}

    private Line line(History history, Visitor visitor) {
        LocalDate today = visitor.today();
        return new Line(
                history.sowing(),
                history.request(),
                history.stayOn(today),
                SowingView.next(view.timeline(history, visitor)));
    }
}
