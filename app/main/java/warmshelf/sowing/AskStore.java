package warmshelf.sowing;

import java.time.LocalDate;
import java.util.UUID;
import java.util.function.Consumer;
import org.jooq.DSLContext;
import warmshelf.allocation.RequestStore;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;

/** Keeps what was asked: the new packet, its test, the sowing and its request, all or nothing. */
final class AskStore {
    private final DSLContext sql;
    private final LotStore lots;
    private final SowingStore sowings;
    private final RequestStore requests;
    private final SeedClaimStore claims;

    AskStore(Database database, LotStore lots, SowingStore sowings, RequestStore requests, SeedClaimStore claims) {
        this.sql = database.sql();
        this.lots = lots;
        this.sowings = sowings;
        this.requests = requests;
        this.claims = claims;
    }

    /** Keeps a plan that was found good, if its seed is still there. */
    Decision<SeedClaimStore.Held> send(AskPlan plan, LocalDate today, UUID by) {
        return send(plan, today, by, tx -> {});
    }

    /** The same for what was gathered before, which waits no more then; overtaken where it did not wait any more. */
    Decision<SeedClaimStore.Held> sendGathered(AskPlan plan, UUID gathered, LocalDate today, UUID by) {
        return send(plan, today, by, tx -> GatheredStore.sent(tx, gathered, by));
    }

    private Decision<SeedClaimStore.Held> send(AskPlan plan, LocalDate today, UUID by, Consumer<DSLContext> first) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            SeasonGateStore.enter(tx, plan.asking().season());
            first.accept(tx);
            UUID sowingId = UUID.randomUUID();
            UUID lotId = plan.ask().lot() == null
                    ? addPacket(tx, plan, today, by)
                    : plan.ask().lot().id();
            Sowing sowing = sowing(plan, sowingId, lotId);
            return claims.claim(tx, sowing, () -> keep(tx, plan, sowing, by), by);
        }));
    }

    private void keep(DSLContext tx, AskPlan plan, Sowing sowing, UUID by) {
        sowings.add(tx, sowing, by);
        sowings.noteTray(tx, sowing.id(), plan.ask().cellsInATray());
        AskPlanner.request(plan, sowing.id()).ifPresent(request -> requests.add(tx, request));
    }

    private UUID addPacket(DSLContext tx, AskPlan plan, LocalDate today, UUID by) {
        AskForm.Packet packet = java.util.Objects.requireNonNull(plan.ask().packet());
        UUID lotId = lots.add(
                tx,
                new NewLot(
                        packet.crop().id(),
                        packet.variety(),
                        packet.year(),
                        packet.seeds(),
                        by,
                        packet.treated(),
                        "",
                        packet.source(),
                        packet.storage()),
                by);
        if (packet.tested() != null && packet.germinated() != null) {
            lots.recordTest(tx, lotId, new GerminationTest(today, packet.germinated(), packet.tested()), by);
        }
        return lotId;
    }

    private static Sowing sowing(AskPlan plan, UUID id, UUID lotId) {
        AskForm.Ask ask = plan.ask();
        Asking asking = plan.asking();
        return new Sowing(
                id,
                asking.grower(),
                asking.season(),
                asking.part(),
                asking.crop(),
                lotId,
                ask.variety(),
                ask.treated(),
                ask.plants(),
                ask.method(),
                ask.warm(),
                ask.container(),
                plan.seeds().seeds(),
                ask.seedsPerCell(),
                plan.seeds().cells(),
                asking.risk(),
                asking.underCoverOn(),
                SowingStage.PLANNED,
                ask.note(),
                1,
                null);
    }
}
