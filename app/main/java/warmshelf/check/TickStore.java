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
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceClash;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.LotStore;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.LotRequest;
import warmshelf.sowing.LotRequestStore;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;
import warmshelf.words.Units;

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

    public TickStore(
            Database database, Audit audit, SowingStore sowings, EntryStore entries, StayStore stays, LotStore lots) {
        this.sql = database.sql();
        this.audit = audit;
        this.sowings = sowings;
        this.entries = entries;
        this.stays = stays;
        this.lots = lots;
        this.lotRequests = new LotRequestStore(database, audit);
        this.slowSeed = new SlowSeedStore(sowings, entries, stays);
    }

    /**
     * Keeps a tick.
     *
     * @param lightUntil the day until which a place under the light is wanted, if one is
     */
    public TickOutcome keep(UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        return keep(sql, sowingId, tick, lightUntil, by);
    }

    /** The same within the caller's transaction, where there is one: a refusal leaves what else it holds untouched. */
    TickOutcome keep(DSLContext within, UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        try {
            TickOutcome outcome =
                    within.transactionResult(inside -> keepInside(inside.dsl(), sowingId, tick, lightUntil, by));
            return outcome instanceof TickOutcome.Kept kept && !kept.again()
                    ? withSpace(within, kept, sowingId, tick, by)
                    : outcome;
        } catch (SpaceClash clash) {
            return new TickOutcome.Refused(409, clash.sentence(Units.METRIC), true);
        } catch (IntegrityConstraintViolationException twice) {
            // Two phones sent the same entry at the same moment: one row is kept, and that is all that was wanted.
            return entries.find(within, tick.id())
                    .<TickOutcome>map(kept -> kept.sowingId().equals(sowingId)
                            ? new TickOutcome.Kept(stageOf(within, sowingId), true, "")
                            : new TickOutcome.Refused(409, "This entry's id was used for another sowing already."))
                    .orElseThrow(() -> twice);
        }
    }

    private TickOutcome withSpace(DSLContext within, TickOutcome.Kept kept, UUID sowingId, Tick tick, UUID by) {
        String space = slowSeed.extend(within, sowingId, kept.stage(), tick.seenOn(), by);
        return new TickOutcome.Kept(kept.stage(), false, (kept.remark() + " " + space).strip());
    }

    private SowingStage stageOf(DSLContext within, UUID sowingId) {
        return sowings.find(within, sowingId).map(Sowing::stage).orElseThrow();
    }

    private TickOutcome keepInside(DSLContext tx, UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        Optional<Sowing> held = sowings.findAndHold(tx, sowingId);
        if (held.isEmpty()) {
            return new TickOutcome.Refused(404, "There is no such sowing.");
        }
        Sowing sowing = held.get();
        List<Entry> before = entries.ofSowing(tx, sowingId);
        if (before.stream().anyMatch(entry -> entry.id().equals(tick.id()))) {
            return new TickOutcome.Kept(sowing.stage(), true, "");
        }
        TickJudge judge = judge(tx, sowing, before, tick);
        Optional<String> refusal = judge.refusal();
        if (refusal.isPresent()) {
            return new TickOutcome.Refused(409, refusal.get());
        }
        Optional<Entry> same = judge.repeats(by);
        if (same.isPresent()) {
            return new TickOutcome.Repeated(same.get().id());
        }
        Entry entry = entry(sowingId, tick, by);
        entries.add(tx, entry);
        List<Entry> after = new ArrayList<>(before);
        after.add(entry);
        Progress progress = Progress.of(sowing.method(), sowing.seeds(), after);
        sowings.moveTo(tx, sowingId, progress.stage());
        writeOffSeeds(
                tx, sowing, Progress.of(sowing.method(), sowing.seeds(), before).isSown(), progress.isSown(), by);
        if (judge.isDouble() || judge.isOvertaken()) {
            return new TickOutcome.Kept(progress.stage(), false, placesStay(tick));
        }
        // Later, what lies under a light lies there by a tick, and is no booking any more.
        boolean firstMove = sowing.stage().compareTo(SowingStage.UNDER_LIGHT) < 0
                && Progress.of(sowing.method(), sowing.seeds(), before).moved() == 0;
        moveSpace(tx, sowing, progress.stage(), firstMove, tick, lightUntil, by);
        return new TickOutcome.Kept(progress.stage(), false, "");
    }

    /** Seed goes out of its lot once, when it is sown, and comes back when that entry is taken back. */
    private void writeOffSeeds(DSLContext tx, Sowing sowing, boolean wasSown, boolean isSown, UUID by) {
        if (isSown && !wasSown) {
            takeSeeds(tx, sowing, by);
        } else if (wasSown && !isSown) {
            int taken = sowings.seedsTaken(tx, sowing.id());
            if (taken > 0) {
                lots.putBack(tx, sowing.lotId(), taken, by);
                sowings.noteSeedsTaken(tx, sowing.id(), 0);
            }
        }
    }

    /** A packet that held fewer than was believed is empty now: what was sown was sown. */
    private void takeSeeds(DSLContext tx, Sowing sowing, UUID by) {
        // Where the sowing got no seed of the lot, whatever was sown came from elsewhere.
        boolean ofAnotherLot = lotRequests
                .find(tx, sowing.id())
                .filter(LotRequest::isWithoutSeed)
                .isPresent();
        if (ofAnotherLot || sowings.seedsTaken(tx, sowing.id()) > 0) {
            return;
        }
        Integer left = lots.hold(tx, sowing.lotId()).seedsLeft();
        int seeds = left == null ? 0 : Math.min(sowing.seeds(), left);
        if (seeds > 0) {
            lots.take(tx, sowing.lotId(), seeds, by);
        }
        sowings.noteSeedsTaken(tx, sowing.id(), seeds);
    }

    private TickJudge judge(DSLContext tx, Sowing sowing, List<Entry> before, Tick tick) {
        Tick.FromPhone phone = tick.fromPhone();
        return phone == null
                ? new TickJudge(sowing, before, Set.of(), tick, audit.now())
                : new TickJudge(
                        sowing, before, entries.keptAfter(tx, sowing.id(), phone.knewUntil()), tick, phone.seenAt());
    }

    private static String placesStay(Tick tick) {
        return tick.step() == EntryStep.LOOK || tick.step() == EntryStep.UNDONE
                ? ""
                : "Somebody entered the same or a later step already, so its place stays as they left it.";
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

    private void moveSpace(
            DSLContext tx,
            Sowing sowing,
            SowingStage stage,
            boolean firstMove,
            Tick tick,
            LocalDate lightUntil,
            UUID by) {
        if (tick.step() == EntryStep.LOOK || tick.step() == EntryStep.UNDONE) {
            return;
        }
        boolean leavesMat = stage.compareTo(SowingStage.UNDER_LIGHT) >= 0
                || stage == SowingStage.IN_CELLS
                || tick.step() == EntryStep.OFF_HEAT;
        boolean leavesLight = stage.compareTo(SowingStage.HARDENING_OFF) >= 0;
        List<Stay> lying = StayBookStore.ofSowing(tx, sowing.id());
        // A bag that is moved seed by seed stays on its mat while its first cells lie under the light already.
        boolean partlyMoved = tick.step() == EntryStep.MOVED_TO_CELLS && !leavesMat;
        boolean leavesNow = tick.step() == EntryStep.OFF_HEAT
                || tick.step() == EntryStep.UNDER_LIGHT
                || tick.step() == EntryStep.MOVED_TO_CELLS;
        Optional<Stay> booked = leavesNow && firstMove
                ? lying.stream()
                        .filter(stay -> !stay.isOnMat() && stay.to().isAfter(tick.seenOn()))
                        .findFirst()
                : Optional.empty();
        if (booked.isPresent() && !leavesLight && (tick.goesHome() || tick.lightPlace() != null)) {
            stays.end(tx, booked.get(), tick.seenOn(), by);
        } else if (booked.isPresent() && !leavesLight && !booked.get().isBegunBy(tick.seenOn())) {
            stays.beginEarlier(tx, booked.get(), tick.seenOn(), by);
        }
        boolean staysUnderLight = partlyMoved
                && !firstMove
                && lying.stream().anyMatch(stay -> !stay.isOnMat() && stay.covers(tick.seenOn()));
        Tick.LightPlace light = leavesMat || partlyMoved ? tick.lightPlace() : null;
        for (Stay stay : lying) {
            if (leavesLight || (leavesMat && (light != null || stay.isOnMat()))) {
                stays.end(tx, stay, tick.seenOn(), by);
            }
        }
        if (light != null && !leavesLight && !staysUnderLight) {
            LocalDate to = lightUntil.isAfter(tick.seenOn())
                    ? lightUntil
                    : tick.seenOn().plusDays(1);
            stays.layUnderLight(
                    tx, sowing.id(), new PlaceAndDays(light.placeId(), light.slot(), tick.seenOn(), to), by);
        }
    }
}
