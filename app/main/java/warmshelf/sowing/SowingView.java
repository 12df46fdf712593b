package warmshelf.sowing;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.LotBalance;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.web.Visitor;

/** What the list of sowings and the page of each share. */
final class SowingView {
    private final SowingStores stores;
    private final SowingPlanner planner;

    SowingView(SowingStores stores) {
        this.stores = stores;
        this.planner = stores.planner();
    }

    /** How each sowing that is not sown yet stands with its seed. */
    Map<UUID, SeedStanding> seedOf(List<Sowing> some) {
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

    /** The first step that is not done; null: none is left, or nothing can be counted back. */
    static @Nullable TimelineStep next(Optional<Timeline> timeline) {
        return timeline.flatMap(dates -> dates.steps().stream()
                        .filter(step -> step.done() == null)
                        .findFirst())
                .orElse(null);
    }

    /** Its dates in the visitor's units; empty where nothing can be counted back. */
    Optional<Timeline> timeline(History history, Visitor visitor) {
        return planner.inUnits(visitor.units()).timeline(history, visitor.today());
    }
}
