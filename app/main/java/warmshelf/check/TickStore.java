package warmshelf.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.allocation.SpaceClash;
import warmshelf.allocation.Spot;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.LotStore;
import warmshelf.seed.Taking;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;

/** Keeps ticks: the entry, the stage it leads to and what it does to the sowing's space, all in one transaction. */
public final class TickStore {
    private final DSLContext sql;
    private final Audit audit;
    private final SowingStore sowings;
    private final EntryStore entries;
    private final StayStore stays;
    private final LotStore lots;
    private final SlowSeedStore slowSeed;

    public TickStore(
            Database database, Audit audit, SowingStore sowings, EntryStore entries, StayStore stays, LotStore lots) {
        this.sql = database.sql();
        this.audit = audit;
        this.sowings = sowings;
        this.entries = entries;
        this.stays = stays;
        this.lots = lots;
        this.slowSeed = new SlowSeedStore(database, sowings, entries, stays);
    }

    /**
     * Keeps a tick.
     *
     * @param lightUntil the day until which a place under the light is wanted, if one is
     */
    public TickOutcome keep(UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        try {
            TickOutcome outcome = sql.transactionResult(inside -> keep(inside.dsl(), sowingId, tick, lightUntil, by));
            return outcome instanceof TickOutcome.Kept kept && !kept.again()
                    ? new TickOutcome.Kept(
                            kept.stage(), false, slowSeed.extend(sowingId, kept.stage(), tick.seenOn(), by))
                    : outcome;
        } catch (SpaceClash clash) {
            return new TickOutcome.Refused(409, clash.sentence());
        } catch (IntegrityConstraintViolationException twice) {
            // Two phones sent the same entry at the same moment: one row is kept, and that is all that was wanted.
            return entries.find(sql, tick.id())
                    .<TickOutcome>map(kept -> kept.sowingId().equals(sowingId)
                            ? new TickOutcome.Kept(stageOf(sowingId), true, "")
                            : new TickOutcome.Refused(409, "This entry's id was used for another sowing already."))
                    .orElseThrow(() -> twice);
        }
    }

    private SowingStage stageOf(UUID sowingId) {
        return sowings.find(sowingId).map(Sowing::stage).orElseThrow();
    }

    private TickOutcome keep(DSLContext tx, UUID sowingId, Tick tick, LocalDate lightUntil, UUID by) {
        Optional<Sowing> held = sowings.findAndHold(tx, sowingId);
        if (held.isEmpty()) {
            return new TickOutcome.Refused(404, "There is no such sowing.");
        }
        Sowing sowing = held.get();
        List<Entry> before = entries.ofSowing(tx, sowingId);
        if (before.stream().anyMatch(entry -> entry.id().equals(tick.id()))) {
            return new TickOutcome.Kept(sowing.stage(), true, "");
        }
        Optional<String> refusal = refusal(sowing, before, tick);
        if (refusal.isPresent()) {
            return new TickOutcome.Refused(409, refusal.get());
        }
        Entry entry = entry(sowingId, tick, by);
        entries.add(tx, entry);
        List<Entry> after = new ArrayList<>(before);
        after.add(entry);
        Progress progress = Progress.of(sowing.method(), sowing.seeds(), after);
        sowings.moveTo(tx, sowingId, progress.stage());
        // A corrected entry of sowing tells of the same seeds once more.
        if (tick.step() == EntryStep.SOWN && before.stream().noneMatch(earlier -> earlier.step() == EntryStep.SOWN)) {
            takeSeeds(tx, sowing, by);
        }
        boolean firstMove = Progress.of(sowing.method(), sowing.seeds(), before).moved() == 0;
        moveSpace(tx, sowing, progress.stage(), firstMove, tick, lightUntil, by);
        return new TickOutcome.Kept(progress.stage(), false, "");
    }

    /** A packet that held fewer than was believed is empty now: what was sown was sown. */
    private void takeSeeds(DSLContext tx, Sowing sowing, UUID by) {
        Taking taking = lots.take(tx, sowing.lotId(), sowing.seeds(), by);
        if (taking instanceof Taking.TooFew few && few.left() > 0) {
            lots.take(tx, sowing.lotId(), few.left(), by);
        }
    }

    private static Optional<String> refusal(Sowing sowing, List<Entry> before, Tick tick) {
        Optional<Entry> corrected = before.stream()
                .filter(entry -> entry.id().equals(tick.supersedes()))
                .findFirst();
        if (tick.supersedes() != null && corrected.isEmpty()) {
            return Optional.of("The entry to correct is not one of this sowing's.");
        }
        List<Entry> standing = before.stream()
                .filter(entry -> !Objects.equals(entry.id(), tick.supersedes()))
                .toList();
        Progress progress = Progress.of(sowing.method(), sowing.seeds(), standing);
        if (sowing.stage() == SowingStage.WITHDRAWN || progress.stage().isOver()) {
            return Optional.of(
                    "%s has ended (%s); nothing more is entered for it. To mend a slip, correct the last entry."
                            .formatted(sowing.title(), sowing.stage().title()));
        }
        // The same step once more says how it was, not what comes next.
        boolean sameStep =
                corrected.filter(entry -> entry.step() == tick.step()).isPresent();
        return sameStep ? Optional.empty() : TickRules.refusal(sowing, progress, tick);
    }

    private Entry entry(UUID sowingId, Tick tick, UUID by) {
        OffsetDateTime now = audit.now();
        return new Entry(
                tick.id(),
                sowingId,
                tick.step(),
                tick.seenOn(),
                now,
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
        if (tick.step() == EntryStep.LOOK) {
            return;
        }
        boolean leavesMat = stage.compareTo(SowingStage.UNDER_LIGHT) >= 0
                || stage == SowingStage.IN_CELLS
                || tick.step() == EntryStep.OFF_HEAT;
        boolean leavesLight = stage.compareTo(SowingStage.HARDENING_OFF) >= 0;
        List<Stay> lying = StayBookStore.ofSowing(tx, sowing.id());
        // A bag that is moved seed by seed stays on its mat while its first cells lie under the light already.
        boolean partlyMoved = tick.step() == EntryStep.MOVED_TO_CELLS && !leavesMat;
        boolean leavesNow = tick.step() == EntryStep.OFF_HEAT || tick.step() == EntryStep.MOVED_TO_CELLS;
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
            stays.layUnderLight(tx, sowing.id(), new Spot(light.placeId(), light.slot(), tick.seenOn(), to), by);
        }
    }
}
