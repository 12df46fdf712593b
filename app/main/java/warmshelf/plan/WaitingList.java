package warmshelf.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.finding.trial.TrialWarnings;
import warmshelf.sowing.Asking;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;

/** Who waits and fits into room that was left early. It is worked out anew each time, so an offer lapses when the room is taken. */
final class WaitingList {
    private static final int DAYS_AHEAD = 400;

    private final SowingStores stores;
    private final FreedSpaceStore freed;
    private final TrialWarmthStore trials;

    WaitingList(SowingStores stores, FreedSpaceStore freed, TrialWarmthStore trials) {
        this.stores = stores;
        this.freed = freed;
        this.trials = trials;
    }

    /**
     * Freed room offered to a waiting request.
     *
     * @param warnings what taking it would do to a trial that it is of
     */
    public record FreedOffer(Sowing sowing, SpaceRequest request, FreedSpaceFit.Fit fit, TrialWarnings warnings) {}

    List<FreedOffer> all(LocalDate today) {
        List<FreedSpaceStore.Freed> rooms = freed.reachingBeyond(today);
        return rooms.isEmpty() ? List.of() : offers(stores.histories().underWay(), rooms, today);
    }

    List<FreedOffer> ofMember(UUID member, LocalDate today) {
        List<FreedSpaceStore.Freed> rooms = freed.reachingBeyond(today);
        return rooms.isEmpty() ? List.of() : offers(stores.histories().underWay(member), rooms, today);
    }

    private List<FreedOffer> offers(List<History> underWay, List<FreedSpaceStore.Freed> rooms, LocalDate today) {
        List<History> waiting = underWay.stream()
                .filter(history ->
                        history.request() != null && history.request().isWaiting())
                .toList();
        if (waiting.isEmpty()) {
            return List.of();
        }
        FreedSpaceFit fits = new FreedSpaceFit(stores.space().board(today, today.plusDays(DAYS_AHEAD)), today);
        return waiting.stream()
                .flatMap(history ->
                        fits.fit(wish(history, today), rooms).stream().map(fit -> offer(history, fit)))
                .toList();
    }

    private FreedOffer offer(History history, FreedSpaceFit.Fit fit) {
        return new FreedOffer(
                history.sowing(),
                Objects.requireNonNull(history.request()),
                fit,
                trials.warnings(history.sowing(), fit.warm()));
    }

    private SpaceWish wish(History history, LocalDate today) {
        SpaceRequest request = Objects.requireNonNull(history.request());
        return new SpaceWish(
                request.sowingId(),
                request.quarters(),
                request.earliest(),
                request.ideal(),
                request.latest(),
                request.band(),
                request.needsLight(),
                stores.planner().daysAt(Asking.of(history.sowing()), today, request.days()));
    }
}
