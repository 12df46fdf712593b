package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.photo.PhotoStore;
import warmshelf.seed.LotBalance;
import warmshelf.timeline.SeasonPicture;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.timeline.Verdict;
import warmshelf.web.Aside;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** A member's sowings, and the page of each. */
public final class SowingPages implements Pages {
    private final SowingStores stores;
    private final CropCatalogue crops;
    private final SowingPlanner planner;
    private final HistoryStore histories;
    private final PhotoStore photos;
    private final AcceptedRiskStore risks;
    private final Aside aside;

    SowingPages(SowingStores stores, PhotoStore photos, AcceptedRiskStore risks, Aside aside) {
        this.stores = stores;
        this.crops = stores.crops();
        this.planner = stores.planner();
        this.histories = stores.histories();
        this.photos = photos;
        this.risks = risks;
        this.aside = aside;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings", this::mine, Role.MEMBER);
        routes.get("/sowings/{id}", this::one, Role.MEMBER);
    }

    /** One line of a member's list. */
    public record Line(
            Sowing sowing,
            @Nullable SpaceRequest request,
            @Nullable Stay stay,
            @Nullable TimelineStep next) {}

    private void mine(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<History> mine = histories.ofMember(visitor.memberId());
        List<Line> lines = mine.stream().map(history -> line(history, visitor)).toList();
        Respond.page(
                ctx,
                "sowing/list.peb",
                new ListPage(
                        seedOf(mine.stream().map(History::sowing).toList()),
                        SeasonRows.of(mine).picture(planner, visitor.today()),
                        lines.stream()
                                .filter(line -> !line.sowing().stage().isOver())
                                .toList(),
                        lines.stream()
                                .filter(line -> line.sowing().stage().isOver())
                                .toList()),
                aside.model(visitor));
    }

    /** A member's sowings: those under way, then those that are over, with how each stands with its seed. */
    private record ListPage(
            Map<UUID, SeedStanding> seeds, @Nullable SeasonPicture season, List<Line> underWay, List<Line> over) {}

    /** How each sowing that is not sown yet stands with its seed. */
    private Map<UUID, SeedStanding> seedOf(List<Sowing> some) {
        List<Sowing> planned =
                some.stream().filter(sowing -> sowing.stage().isBeforeSowing()).toList();
        Map<UUID, LotRequest> requests =
                stores.lotRequests().ofSowings(planned.stream().map(Sowing::id).toList());
        Map<UUID, LotBalance> balances = stores.balances()
                .of(stores.lots()
                        .all(planned.stream().map(Sowing::lotId).distinct().toList()));
        return planned.stream()
                .collect(Collectors.toMap(
                        Sowing::id,
                        sowing -> SeedStanding.of(
                                sowing,
                                Objects.requireNonNull(balances.get(sowing.lotId())),
                                requests.get(sowing.id()))));
    }

    private Line line(History history, Visitor visitor) {
        LocalDate today = visitor.today();
        TimelineStep next = timeline(history, visitor)
                .flatMap(timeline -> timeline.steps().stream()
                        .filter(step -> step.done() == null)
                        .findFirst())
                .orElse(null);
        return new Line(history.sowing(), history.request(), history.stayOn(today), next);
    }

    private void one(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        History history = histories.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Sowing sowing = history.sowing();
        Optional<Timeline> timeline = timeline(history, visitor);
        boolean tooLate = sowing.stage().isBeforeSowing()
                && timeline.filter(dates -> dates.verdict() == Verdict.TOO_LATE).isPresent();
        Respond.page(
                ctx,
                "sowing/show.peb",
                new SowingPage(
                        history,
                        sowing,
                        history.progress(),
                        photos.ofSowing(sowing.id()),
                        stores.problems().open(List.of(history)).getOrDefault(sowing.id(), List.of()),
                        stores.problems()
                                .answersTo(history.entries().stream()
                                        .map(Entry::id)
                                        .toList()),
                        visitor.coordinator()
                                || visitor.memberId().equals(sowing.grower().memberId()),
                        history.stayOn(visitor.today()),
                        mayWithdraw(visitor, sowing),
                        WithdrawalPages.isOurs(visitor, sowing)
                                && histories.withdrawals().mayTakeBack(sowing),
                        seedOf(List.of(sowing)).get(sowing.id()),
                        timeline.orElse(null),
                        timeline.map(dates -> dates.season().sentences(visitor.units()))
                                .orElse(List.of()),
                        timeline.map(dates ->
                                        StepLine.of(dates, Asking.of(sowing), sowing.hazards(), crops, visitor.units()))
                                .orElse(List.of()),
                        planner.learnedOf(sowing, history.celsius(planner), visitor.units()),
                        history.dayCount(visitor.today()),
                        moves(history, visitor),
                        tooLate,
                        tooLate ? instead(sowing, visitor.today()) : List.of(),
                        mayAskAgain(visitor, history) ? AskAddress.again(sowing) : null));
    }

    private List<Redating.Move> moves(History history, Visitor visitor) {
        Sowing sowing = history.sowing();
        if (sowing.stage().isOver() || history.entries().isEmpty()) {
            return List.of();
        }
        double celsius = history.celsius(planner);
        Asking asking = Asking.of(sowing);
        return new Redating(sowing, (day, seen) -> planner.timeline(asking, celsius, day, seen))
                .moves(history.entries(), stores.sowings().askedOn(sowing.id(), visitor.zone()), visitor.today());
    }

    private List<StillInTime.Other> instead(Sowing sowing, LocalDate today) {
        Map<Hardiness, Double> accepted = risks.of(sowing.grower().memberId());
        return new StillInTime(planner, crops, each -> accepted.getOrDefault(each, each.usualRisk()))
                .insteadOf(
                        Asking.of(sowing),
                        stores.balances().freeFor(sowing.grower().memberId()),
                        today);
    }

    private Optional<Timeline> timeline(History history, Visitor visitor) {
        return planner.inUnits(visitor.units())
                .timeline(history.sowing(), history.progress(), history.celsius(planner), visitor.today());
    }

    private static boolean mayAskAgain(Visitor visitor, History history) {
        return visitor.memberId().equals(history.sowing().grower().memberId())
                && (history.progress().seen().sown() != null
                        || history.sowing().stage().isOver());
    }

    private static boolean mayWithdraw(Visitor visitor, Sowing sowing) {
        return WithdrawalPages.isOurs(visitor, sowing) && sowing.stage().isBeforeSowing();
    }
}
