package warmshelf.sowing;

import java.util.List;
import java.util.Optional;
import warmshelf.crop.Method;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotBalance;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Another lot for a sowing that is only planned: how many seeds of it are sown, or why it does not do. */
final class SeedChoice {
    private final Sowing sowing;
    private final int cellsInATray;
    private final Survival survival;

    SeedChoice(Sowing sowing, int cellsInATray, Survival survival) {
        this.sowing = sowing;
        this.cellsInATray = cellsInATray;
        this.survival = survival;
    }

    /** Whether it can be sown from this lot at all. */
    boolean isPossible(LotBalance balance) {
        return balance.lot().cropId().equals(sowing.crop().id())
                && !balance.isUsedUpFor(sowing.grower().memberId());
    }

    /** The seeds to sow of the lot; empty where it does not do, and the form then says why. */
    Optional<SeedPlan> seeds(FormReader form, LotBalance balance, List<GerminationTest> evidence, Units units) {
        SeedPlan plan = SeedPlan.of(
                sowing.plantsWanted(),
                balance.lot().expectation(sowing.crop(), evidence, sowing.season()),
                sowing.seedsPerCell(),
                survival.share(),
                balance.freeFor(sowing.grower().memberId()),
                new BalanceWords(balance).forMember(sowing.grower().memberId()),
                cells(),
                form.ticked("acceptFewer"));
        SeedTrouble problem = plan.problem();
        if (problem != null) {
            form.refuse("lot", problem.words(units));
            return Optional.empty();
        }
        return Optional.of(plan);
    }

    private int cells() {
        return sowing.method() == Method.BAG
                ? Integer.MAX_VALUE
                : cellsInATray * sowing.container().quarters() / 4;
    }
}
