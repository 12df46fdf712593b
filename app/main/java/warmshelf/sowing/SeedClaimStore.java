package warmshelf.sowing;

import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;

/**
 * Holds seed for sowings, asks owners for it, and takes their answers. Each decision is made with the lot held, by the same
 * {@link LotBalance} that the pages show, so that the last seeds are promised once.
 */
public final class SeedClaimStore {
    private final DSLContext sql;
    private final SowingStore sowings;
    private final LotBalanceStore balances;
    private final LotRequestStore requests;

    public SeedClaimStore(Database database, SowingStore sowings, LotBalanceStore balances, LotRequestStore requests) {
        this.sql = database.sql();
        this.sowings = sowings;
        this.balances = balances;
        this.requests = requests;
    }

    /** The same for whoever has no stores at hand but these. */
    public static SeedClaimStore over(Database database, Audit audit, SowingStore sowings, EntryStore entries) {
        LotBalanceStore balances =
                new LotBalanceStore(database, audit, new LotStore(database, audit), new LotUseStore(database));
        return new SeedClaimStore(database, sowings, balances, new LotRequestStore(database, audit));
    }

    /**
     * Seed that is held for a sowing.
     *
     * @param asked its owner, who answers first; null: nobody is asked
     */
    public record Held(UUID sowingId, @Nullable Owner asked) {}

    /** Whose seed it is. */
    public record Owner(UUID id, String name) {}

    /**
     * Writes a new sowing and holds its seed, or leaves everything as it is where the seed is not there.
     *
     * @param write writes the sowing; run only when the seed is there
     * @throws Declined when fewer seeds are free; the transaction is to end then
     */
    public Held claim(DSLContext tx, Sowing sowing, Runnable write, UUID by) {
        LotBalance balance = balances.held(tx, sowing.lotId()).without(sowing.id());
        UUID grower = sowing.grower().memberId();
        Integer free = balance.freeFor(grower);
        if (free != null && free < sowing.seeds()) {
            throw Declined.refused(new SowingRefusal.TooFewSeeds(balance, sowing.seeds(), grower));
        }
        write.run();
        if (!balance.isAskedFor(grower)) {
            requests.clear(tx, sowing.id());
            return new Held(sowing.id(), null);
        }
        requests.ask(tx, sowing.id(), sowing.lotId(), sowing.seeds(), by);
        Lot lot = balance.lot();
        return new Held(
                sowing.id(), new Owner(Objects.requireNonNull(lot.ownerId()), Objects.requireNonNull(lot.ownerName())));
    }

    /** Sows a planned sowing from another lot of the same crop, with so many seeds in so many cells. */
    Decision<Held> choose(UUID sowingId, Lot lot, SeedPlan seeds, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Sowing sowing = sowings.findAndHold(tx, sowingId).orElseThrow(Declined::missing);
            if (!sowing.stage().isBeforeSowing()) {
                throw Declined.overtaken(new SowingRefusal.SownAlready());
            }
            Sowing chosen = sowing.sownFrom(lot, seeds.seeds(), seeds.cells());
            return claim(tx, chosen, () -> sowings.changeSeed(tx, chosen, by), by);
        }));
    }

    /**
     * Holds the seed of a sowing that comes back after it had been refused a place or withdrawn.
     *
     * @param sowing as it is now, held by the caller
     */
    public SeedAgain claimAgain(DSLContext tx, Sowing sowing, UUID by) {
        LotBalance balance = balances.held(tx, sowing.lotId()).without(sowing.id());
        @Nullable LotRequest request = requests.find(tx, sowing.id()).orElse(null);
        if (request != null && request.isWithoutSeed()) {
            return SeedAgain.STILL_WITHOUT;
        }
        Integer free = balance.freeFor(sowing.grower().memberId());
        if (free == null || free >= sowing.seeds()) {
            return SeedAgain.HELD;
        }
        requests.noteGone(tx, sowing.id(), sowing.lotId(), sowing.seeds(), by);
        return SeedAgain.GONE_TO_OTHERS;
    }

    /**
     * Answers a request for seed; no seeds mean no. Fewer than asked for leave the sowing with those.
     *
     * @return the id of the sowing; refused when fewer seeds than that can be given, overtaken when it waits no more
     */
    public Decision<UUID> answer(UUID sowingId, int seeds, String reason, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Optional<Sowing> held = sowings.findAndHold(tx, sowingId);
            Optional<LotRequest> request = requests.find(tx, sowingId).filter(LotRequest::isWaiting);
            if (held.isEmpty() || request.isEmpty() || !held.get().stage().isBeforeSowing()) {
                throw Declined.overtaken(new SowingRefusal.NeedsNoAnswer());
            }
            Sowing sowing = held.get();
            LotBalance balance = balances.held(tx, sowing.lotId());
            Integer most = balance.canBeGiven();
            if (most != null && seeds > most) {
                throw Declined.refused(new SowingRefusal.TooManyToGive(balance, seeds));
            }
            if (seeds > 0 && seeds < sowing.seeds()) {
                int cells = (seeds + sowing.seedsPerCell() - 1) / sowing.seedsPerCell();
                sowings.changeSeed(tx, sowing.with(seeds, cells), by);
            }
            requests.answer(tx, sowingId, seeds, reason, by);
            return sowingId;
        }));
    }
}
