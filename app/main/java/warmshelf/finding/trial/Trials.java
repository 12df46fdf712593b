package warmshelf.finding.trial;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.ToIntFunction;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.sowing.History;
import warmshelf.sowing.SowingStores;
import warmshelf.words.Units;

/** The group's trials as their pages need them: the stores, and what is worked out of them. */
final class Trials {
    private static final int MOST_DRAWS = 1_000_000;
    private static final int USUAL_DAYS = 30;

    private final SowingStores stores;
    private final AcceptedRiskStore risks;
    private final TrialBookStore book;
    private final TrialStore trials;

    Trials(SowingStores stores) {
        this.stores = stores;
        this.risks = new AcceptedRiskStore(stores.database(), stores.audit());
        this.book = new TrialBookStore(stores.database(), stores.lots());
        this.trials = new TrialStore(
                stores.database(),
                stores.audit(),
                stores.sowings(),
                stores.requests(),
                stores.balances(),
                stores.claims(),
                () -> ThreadLocalRandom.current().nextInt(1, MOST_DRAWS));
    }

    SowingStores stores() {
        return stores;
    }

    TrialBookStore book() {
        return book;
    }

    TrialStore declaring() {
        return trials;
    }

    TrialPlanner planner(Units units) {
        return new TrialPlanner(stores.planner(), stores.crops(), units);
    }

    /** All lots with seed, as they stand. */
    List<LotBalance> box() {
        List<Lot> lots = stores.lots().withSeed();
        Map<UUID, LotBalance> balances = stores.balances().of(lots);
        return lots.stream()
                .map(lot -> balances.get(lot.id()))
                .filter(java.util.Objects::nonNull)
                .toList();
    }

    /** The share of a lot's seed expected to come up. */
    double share(TrialPlanner planner, Lot lot, int season) {
        return lot.share(planner.crop(lot), stores.use().evidence(stores.lots(), lot), season)
                .mean();
    }

    /** The chance of a later frost that a member accepts for a lot's crop. */
    double risk(TrialPlanner planner, Lot lot, UUID member) {
        Hardiness hardiness = planner.hardiness(lot);
        return risks.of(member).getOrDefault(hardiness, hardiness.usualRisk());
    }

    /** The sowings of some trials with all that happened to them, by their ids. */
    Map<UUID, History> histories(List<Trial> some) {
        return stores.histories()
                .all(some.stream()
                        .flatMap(trial -> trial.blocks().stream())
                        .flatMap(block -> block.sowings().values().stream())
                        .toList());
    }

    /** Days after sowing by which nearly all of a sowing should show. */
    ToIntFunction<History> lastDay() {
        return history -> stores.planner()
                .emergence(history.sowing(), history.celsius(stores.planner()))
                .map(emergence -> (int) Math.ceil(emergence.days95()))
                .orElse(USUAL_DAYS);
    }
}
