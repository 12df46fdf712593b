package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.HashMap;
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
        Map<String, @Nullable Object> model = new HashMap<>(aside.model(visitor));
        model.put("seeds", seedOf(mine.stream().map(History::sowing).toList()));
        model.put("season", SeasonRows.of(mine).picture(planner, visitor.today()));
        model.put(
                "underWay",
                lines.stream().filter(line -> !line.sowing().stage().isOver()).toList());
        model.put(
                "over",
                lines.stream().filter(line -> line.sowing().stage().isOver()).toList());
        ctx.render("sowing/list.peb", model);
    }

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
        Map<String, @Nullable Object> model = new HashMap<>();
        model.put("history", history);
        model.put("sowing", sowing);
        model.put("progress", history.progress());
        model.put("photos", photos.ofSowing(sowing.id()));
        model.put("noted", stores.problems().open(List.of(history)).getOrDefault(sowing.id(), List.of()));
        model.put(
                "answers",
                stores.problems()
                        .answersTo(history.entries().stream().map(Entry::id).toList()));
        model.put(
                "mayTakeOut",
                visitor.coordinator()
                        || visitor.memberId().equals(sowing.grower().memberId()));
        model.put("stay", history.stayOn(visitor.today()));
        model.put("mayWithdraw", mayWithdraw(visitor, sowing));
        model.put("seed", seedOf(List.of(sowing)).get(sowing.id()));
        model.put(
                "mayTakeBack",
                WithdrawalPages.isOurs(visitor, sowing)
                        && histories.withdrawals().mayTakeBack(sowing));
        Optional<Timeline> timeline = timeline(history, visitor);
        model.put("timeline", timeline.orElse(null));
        model.put(
                "steps",
                timeline.map(dates -> StepLine.of(dates, Asking.of(sowing), sowing.hazards(), crops, visitor.units()))
                        .orElse(List.of()));
        model.put("learned", planner.learnedOf(sowing, history.celsius(planner), visitor.units()));
        model.put("dayCount", history.dayCount(visitor.today()));
        model.put("moves", moves(history, visitor));
        boolean tooLate =
                timeline.filter(dates -> dates.verdict() == Verdict.TOO_LATE).isPresent();
        model.put("tooLate", tooLate && sowing.stage().isBeforeSowing());
        model.put("instead", tooLate && sowing.stage().isBeforeSowing() ? instead(sowing, visitor.today()) : List.of());
        ctx.render("sowing/show.peb", model);
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

    private static boolean mayWithdraw(Visitor visitor, Sowing sowing) {
        return WithdrawalPages.isOurs(visitor, sowing) && sowing.stage().isBeforeSowing();
    }
}
