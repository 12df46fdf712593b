package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.web.Aside;
import warmshelf.web.Awaiting;
import warmshelf.web.Visitor;

/** What waits for a member about seed: what others ask of theirs, and sowings of their own that have none. */
public final class SeedNews implements Aside, Awaiting {
    private final SowingStores stores;

    public SeedNews(SowingStores stores) {
        this.stores = stores;
    }

    /**
     * Seed that somebody asks of a lot.
     *
     * @param left how much of the lot is left and spoken for, in words
     * @param most seeds that can be given; null: nobody has counted
     */
    public record Asked(
            LotRequest request,
            Sowing sowing,
            Lot lot,
            String left,
            @Nullable Integer most) {
        /** Whether all that is asked for can be given. */
        public boolean canBeGiven() {
            return most == null || most >= request.asked();
        }
    }

    /** A sowing whose seed was refused or is gone. */
    public record Lacking(LotRequest request, Sowing sowing) {}

    @Override
    public Map<String, Object> model(Visitor visitor) {
        List<LotRequestStore.Concerning> open = stores.lotRequests().open();
        return Map.of(
                "seedAsked",
                open.stream()
                        .filter(each -> each.request().isWaiting() && answers(visitor, each))
                        .map(each -> asked(each.request()))
                        .toList(),
                "seedLacking",
                open.stream()
                        .filter(each -> each.request().isWithoutSeed()
                                && each.growerId().equals(visitor.memberId()))
                        .map(each -> new Lacking(each.request(), sowing(each.request())))
                        .toList());
    }

    @Override
    public List<Matter> matters(Visitor coordinator) {
        return stores.lotRequests().open().stream()
                .filter(each -> each.request().isWaiting() && answers(coordinator, each))
                .map(each -> matter(asked(each.request())))
                .toList();
    }

    private static Matter matter(Asked asked) {
        return new Matter(
                SAY.seedAskedFor(
                        asked.sowing().grower().name(),
                        asked.request().asked(),
                        asked.lot().variety()),
                asked.left(),
                "/sowings/" + asked.request().sowingId() + "/seed",
                false);
    }

    /** Where the owner has left, or has left the lot to the group, the coordinators answer. */
    private static boolean answers(Visitor visitor, LotRequestStore.Concerning each) {
        return visitor.memberId().equals(each.ownerId())
                || (visitor.coordinator() && (each.ownerId() == null || each.ownerHasLeft()));
    }

    /** A request as its owner sees it. */
    Asked asked(LotRequest request) {
        Lot lot = stores.lots().find(request.lotId()).orElseThrow();
        LotBalance balance = stores.balances().of(lot);
        return new Asked(
                request,
                sowing(request),
                lot,
                new BalanceWords(balance.without(request.sowingId())).left(),
                balance.canBeGiven());
    }

    private Sowing sowing(LotRequest request) {
        UUID id = request.sowingId();
        return stores.sowings().find(id).orElseThrow();
    }
}
