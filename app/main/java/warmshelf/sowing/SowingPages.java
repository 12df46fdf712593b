package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.photo.PhotoStore;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.timeline.Verdict;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** The page of each sowing. */
final class SowingPages implements Pages {
    private final SowingStores stores;
    private final CropCatalogue crops;
    private final SowingPlanner planner;
    private final HistoryStore histories;
    private final PhotoStore photos;
    private final AcceptedRiskStore risks;
    private final SowingView view;
    private final MessageStore messages;

    SowingPages(SowingStores stores, PhotoStore photos, AcceptedRiskStore risks, SowingView view) {
        this.stores = stores;
        this.crops = stores.crops();
        this.planner = stores.planner();
        this.histories = stores.histories();
        this.photos = photos;
        this.risks = risks;
        this.view = view;
        this.messages = new MessageStore(stores.database(), stores.audit());
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings/{id}", this::one, Role.MEMBER);
    }

    private void one(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        History history = histories.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Sowing sowing = history.sowing();
        Optional<Timeline> timeline = view.timeline(history, visitor);
        TimelineStep next = SowingView.next(timeline);
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
                        histories.typists(sowing.id()),
                        stores.problems().open(List.of(history)).getOrDefault(sowing.id(), List.of()),
                        stores.problems()
                                .answersTo(history.entries().stream()
                                        .map(Entry::id)
                                        .toList()),
                        visitor.coordinator()
                                || visitor.memberId().equals(sowing.grower().memberId()),
                        histories.decided(sowing.id()).orElse(null),
                        history.stayOn(visitor.today()),
                        next,
                        isSeenNow(history, next, visitor.today()),
                        mayWithdraw(visitor, sowing),
                        WithdrawalPages.isOurs(visitor, sowing)
                                && histories.withdrawals().mayTakeBack(sowing),
                        view.seedOf(List.of(sowing)).get(sowing.id()),
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
                        mayAskAgain(visitor, history) ? AskAddress.again(sowing) : null,
                        messages.ofSowing(sowing.id())));
    }

    private static boolean isSeenNow(History history, @Nullable TimelineStep next, LocalDate today) {
        return !history.sowing().stage().isBeforeSowing()
                || (next != null && !next.ideal().isAfter(today));
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

    private static boolean mayAskAgain(Visitor visitor, History history) {
        return visitor.memberId().equals(history.sowing().grower().memberId())
                && (history.progress().seen().sown() != null
                        || history.sowing().stage().isOver());
    }

    private static boolean mayWithdraw(Visitor visitor, Sowing sowing) {
        return WithdrawalPages.isOurs(visitor, sowing) && sowing.stage().isBeforeSowing();
    }
}
