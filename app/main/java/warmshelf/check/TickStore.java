package warmshelf.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;
import warmshelf.seed.LotStore;
import warmshelf.sowing.CompostStore;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.LotRequest;
import warmshelf.sowing.LotRequestStore;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingResultStore;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;
import warmshelf.surplus.SurplusStore;
import warmshelf.words.Message;

/** Keeps ticks: the entry, the stage it leads to and what it does to the sowing's space, all in one transaction. */
public final class TickStore {
    private final DSLContext sql;
    private final Audit audit;
    private final SowingStore sowings;
    private final EntryStore entries;
    private final StayStore stays;
    private final LotStore lots;
    private final LotRequestStore lotRequests;
    private final SlowSeedStore slowSeed;
    private final CompostStore composts;
    private final NewsBookStore news;
    private final SurplusStore surplus;

    public TickStore(
            Database database, Audit audit, SowingStore sowings, EntryStore entries, StayStore stays, LotStore lots) {
        this.sql = database.sql();
        this.audit = audit;
        this.sowings = sowings;
        this.entries = entries;
        this.stays = stays;
        this.lots = lots;
        this.lotRequests = new LotRequestStore(database, audit);
        this.composts = new CompostStore(sql, audit);
        this.news = new NewsBookStore(audit);
        this.surplus = new SurplusStore(database, audit, sowings, entries);
        this.slowSeed = new SlowSeedStore(sowings, entries, stays);
    }

    /**
     * Keeps a tick.
     *
     * @param lightUntil the day until which a place under the light is wanted, if one is
     */
    public Decision<TickOutcome> keep(UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        return keep(sql, sowingId, tick, lightUntil, by);
    }

    /** The same within the caller's transaction, where there is one: a no leaves what else it holds untouched. */
    Decision<TickOutcome> keep(DSLContext within, UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        return Decision.of(() -> {
            TickOutcome outcome = kept(within, sowingId, tick, lightUntil, by);
            return outcome instanceof TickOutcome.Kept kept && !kept.again()
                    ? withSpace(within, kept, sowingId, tick, by)
                    : outcome;
        });
    }

    /** Settles a sowing within the transaction that closes its season: it ends as the tick says, and its places are free. */
    public Decision<TickOutcome> settle(DSLContext tx, UUID sowingId, Tick tick, UUID by) {
        return Decision.of(() -> keepInside(tx, sowingId, tick, tick.seenOn(), by, true));
    }

    private TickOutcome kept(DSLContext within, UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        try {
            return within.transactionResult(inside -> keepInside(inside.dsl(), sowingId, tick, lightUntil, by, false));
        } catch (IntegrityConstraintViolationException twice) {
            // Two phones sent the same entry at the same moment: one row is kept, and that is all that was wanted.
            Entry entry = entries.find(within, tick.id()).orElseThrow(() -> twice);
            if (!entry.sowingId().equals(sowingId)) {
                throw Declined.refused(new TickRefusal.IdOfAnotherSowing());
            }
            return new TickOutcome.Kept(stageOf(within, sowingId), true, List.of());
        }
    }

    private TickOutcome withSpace(DSLContext within, TickOutcome.Kept kept, UUID sowingId, Tick tick, UUID by) {
        List<Message> remarks = new ArrayList<>(kept.remarks());
        slowSeed.extend(within, sowingId, kept.stage(), tick.seenOn(), by).ifPresent(remarks::add);
        return new TickOutcome.Kept(kept.stage(), false, remarks);
    }

    private SowingStage stageOf(DSLContext within, UUID sowingId) {
        return sowings.find(within, sowingId).map(Sowing::stage).orElseThrow();
    }

    private TickOutcome keepInside(
            DSLContext tx, UUID sowingId, Tick tick, LocalDate lightUntil, UUID by, boolean settles) {
        Sowing sowing = sowings.findAndHold(tx, sowingId).orElseThrow(Declined::missing);
        List<Entry> before = entries.ofSowing(tx, sowingId);
        if (before.stream().anyMatch(entry -> entry.id().equals(tick.id()))) {
            return new TickOutcome.Kept(sowing.stage(), true, List.of());
        }
        TickJudge judge = judge(tx, sowing, before, tick, settles);
        judge.refusal().ifPresent(reason -> {
            throw Declined.refused(reason);
        });
        Optional<Entry> same = judge.repeats(lookedBy(tick, by));
        if (same.isPresent()) {
            return new TickOutcome.Repeated(same.get().id());
        }
        Entry entry = entry(sowingId, tick, lookedBy(tick, by));
        if (entry.by().equals(by)) {
            entries.add(tx, entry);
        } else {
            entries.addTyped(tx, entry, by);
        }
        if (!tick.compost().isEmpty()) {
            composts.note(tx, sowingId, tick.compost(), by);
        }
        List<Entry> after = new ArrayList<>(before);
        after.add(entry);
        Progress was = Progress.of(sowing.method(), sowing.seeds(), before);
        Progress now = Progress.of(sowing.method(), sowing.seeds(), after);
        // A look moves nothing: where it lies is asked only when what was seen there holds the rack.
        boolean leavesSpace = tick.step() == EntryStep.LOOK || tick.step() == EntryStep.UNDONE;
        List<Stay> lying = leavesSpace && !holdsRacks(entry) ? List.of() : StayBookStore.ofSowing(tx, sowingId);
        holdRacks(tx, entry, lying);
        sowings.moveTo(tx, sowingId, now.stage());
        tell(tx, entry);
        writeOffSeeds(tx, sowing, was.isSown(), now.isSown(), by);
        boolean overtaken = judge.isDouble() || judge.isOvertaken();
        if (!overtaken && !leavesSpace) {
            moveSpace(
                    tx,
                    sowingId,
                    new SpaceAfterTick(sowing.stage(), was.moved(), now.stage(), tick, lying, lightUntil),
                    by);
        }
        SowingResultStore.keep(tx, sowing, before, after, tick.seenOn());
        List<Message> remarks = new ArrayList<>(overtaken ? placesStay(tick) : List.of());
        giveAway(tx, sowingId, tick, by).ifPresent(remarks::add);
        return new TickOutcome.Kept(now.stage(), false, remarks);
    }

    /** What was done at the sowing is kept even where there is not as much to give away as was said. */
    private Optional<Message> giveAway(DSLContext tx, UUID sowing, Tick tick, UUID by) {
        Integer plants = tick.giveAway();
        return plants == null || plants == 0
                ? Optional.empty()
                : surplus.offerWithin(tx, sowing, plants, tick.seenOn(), by);
    }

    /** A grower is told of a problem, until the entry is taken back. */
    private void tell(DSLContext tx, Entry entry) {
        if (entry.supersedes() != null) {
            news.takeBack(tx, entry.supersedes());
        }
        if (entry.problem() != null) {
            news.tellGrower(tx, NewsEvent.ofEntry(NewsKind.PROBLEM, entry.sowingId(), entry.id(), entry.by()));
        }
    }

    /** Seed goes out of its lot once, when it is sown, and comes back when that entry is taken back. */
    private void writeOffSeeds(DSLContext tx, Sowing sowing, boolean wasSown, boolean isSown, UUID by) {
        if (isSown && !wasSown) {
            takeSeeds(tx, sowing, by);
        } else if (wasSown && !isSown) {
            sowings.seedsTaken(tx, sowing.id()).ifPresent(taken -> {
                lots.putBack(tx, sowing.lotId(), taken.seeds(), taken.counts(), by);
                sowings.noteSeedsTaken(tx, sowing.id(), 0);
            });
        }
    }

    /** A packet that held fewer than was believed is empty now: what was sown was sown. */
    private void takeSeeds(DSLContext tx, Sowing sowing, UUID by) {
        // Where the sowing got no seed of the lot, whatever was sown came from elsewhere.
        boolean ofAnotherLot = lotRequests
                .find(tx, sowing.id())
                .filter(LotRequest::isWithoutSeed)
                .isPresent();
        if (ofAnotherLot || sowings.seedsTaken(tx, sowing.id()).isPresent()) {
            return;
        }
        Integer left = lots.hold(tx, sowing.lotId()).seedsLeft();
        int seeds = left == null ? 0 : Math.min(sowing.seeds(), left);
        if (seeds > 0) {
            lots.take(tx, sowing.lotId(), seeds, by);
        }
        sowings.noteSeedsTaken(tx, sowing.id(), seeds);
    }

    private TickJudge judge(DSLContext tx, Sowing sowing, List<Entry> before, Tick tick, boolean settles) {
        Tick.FromPhone phone = tick.fromPhone();
        return phone == null
                ? new TickJudge(sowing, before, Set.of(), tick, audit.now(), settles)
                : new TickJudge(
                        sowing,
                        before,
                        entries.keptAfter(tx, sowing.id(), phone.knewUntil()),
                        tick,
                        phone.seenAt(),
                        settles);
    }

    private static List<Message> placesStay(Tick tick) {
        return tick.step() == EntryStep.LOOK || tick.step() == EntryStep.UNDONE
                ? List.of()
                : List.of(new PlaceRemark.Stays());
    }

    private static UUID lookedBy(Tick tick, UUID by) {
        UUID looked = tick.seenBy();
        return looked == null ? by : looked;
    }

    private Entry entry(UUID sowingId, Tick tick, UUID by) {
        Tick.FromPhone phone = tick.fromPhone();
        OffsetDateTime seenAt = phone == null ? audit.now() : phone.seenAt();
        return new Entry(
                tick.id(),
                sowingId,
                tick.step(),
                tick.seenOn(),
                seenAt,
                tick.sprouted(),
                tick.moved(),
                tick.lost(),
                tick.finished(),
                tick.problem(),
                tick.note(),
                tick.supersedes(),
                by,
                "");
    }

    private static boolean holdsRacks(Entry entry) {
        return entry.problem() != null && entry.problem().spreads();
    }

    /** What spreads holds the racks on which the sowing lay that day. */
    private static void holdRacks(DSLContext tx, Entry entry, List<Stay> lying) {
        if (holdsRacks(entry)) {
            RackHoldStore.hold(
                    tx,
                    entry.id(),
                    entry.supersedes(),
                    lying.stream()
                            .filter(stay -> stay.covers(entry.seenOn()))
                            .map(Stay::placeId)
                            .toList());
        }
    }

    private void moveSpace(DSLContext tx, UUID sowingId, SpaceAfterTick space, UUID by) {
        space.heldBy(RackHoldStore.read(tx)).ifPresent(reason -> {
            throw Declined.refused(reason);
        });
        List<SpaceAfterTick.Change> changes = space.changes();
        if (!changes.isEmpty()) {
            news.tellGrower(tx, NewsEvent.ofSowing(NewsKind.MOVED, sowingId, by));
        }
        for (SpaceAfterTick.Change change : changes) {
            if (change instanceof SpaceAfterTick.Change.End end) {
                stays.end(tx, end.stay(), end.freeFrom(), by);
            } else if (change instanceof SpaceAfterTick.Change.BeginEarlier begin) {
                stays.beginEarlier(tx, begin.stay(), begin.from(), by);
            } else if (change instanceof SpaceAfterTick.Change.LayUnderLight lay) {
                stays.layUnderLight(tx, sowingId, lay.spot(), by);
            }
        }
    }
}
