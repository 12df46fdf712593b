package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.sowing.History;
import warmshelf.sowing.SowingStores;
import warmshelf.surplus.SurplusStore;

/** The demo's seedlings to give away: of those of which most are over, one sowing a grower; some are taken. */
final class DemoSurplus {
    private static final int OFFERS = 4;
    private static final String TAKER = "Dev Anand";

    private final SowingStores stores;
    private final SurplusStore surplus;
    private final SurplusStore.Moment moment;

    DemoSurplus(SowingStores stores, LocalDate today, int season) {
        this.stores = stores;
        this.surplus = new SurplusStore(stores);
        this.moment = new SurplusStore.Moment(today, season);
    }

    void offer(Map<String, UUID> members) {
        UUID taker = members.getOrDefault(TAKER, members.values().iterator().next());
        List<History> most = stores.histories().underWay().stream()
                .filter(history -> history.sowing().trial() == null && over(history) > 1)
                .sorted(Comparator.comparing(DemoSurplus::over).reversed())
                .toList();
        int offers = 0;
        for (History history : most) {
            UUID grower = history.sowing().grower().memberId();
            UUID sowing = history.sowing().id();
            boolean offered = offers < OFFERS
                    && surplus.offer(sowing, over(history), moment, grower)
                            .refusal()
                            .isEmpty();
            if (offered && ++offers == 2 && !grower.equals(taker)) {
                done(surplus.take(sowing, 2, moment, taker));
            }
        }
    }

    private static int over(History history) {
        return history.progress().alive() - history.sowing().plantsWanted();
    }
}
