package warmshelf.finding.trial;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_BLOCK;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.db.generated.Tables.TRIAL_WAY;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.IntSupplier;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RequestStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.seed.LotBalance;
import warmshelf.seed.LotBalanceStore;
import warmshelf.sowing.SeasonGateStore;
import warmshelf.sowing.SeedClaimStore;
import warmshelf.sowing.SowingStore;

/** Declares trials and adds blocks to them, each all or nothing: the draw, the sowings, their requests and their seed. */
public final class TrialStore {
    private final DSLContext sql;
    private final Audit audit;
    private final SowingStore sowings;
    private final RequestStore requests;
    private final LotBalanceStore balances;
    private final SeedClaimStore claims;
    private final IntSupplier draws;

    /** @param draws the numbers from which blocks are dealt out */
    public TrialStore(
            Database database,
            Audit audit,
            SowingStore sowings,
            RequestStore requests,
            LotBalanceStore balances,
            SeedClaimStore claims,
            IntSupplier draws) {
        this.sql = database.sql();
        this.audit = audit;
        this.sowings = sowings;
        this.requests = requests;
        this.balances = balances;
        this.claims = claims;
        this.draws = draws;
    }

    /** Makes the ways of a block once its trial's number and its draw are known. */
    public interface BlockMaking {
        List<PlannedWay> block(int number, TrialDraw draw);
    }

    /** What came of declaring. */
    public record Declared(UUID id, int number) {}

    /**
     * What came of joining.
     *
     * @param owner who is asked for the seed of the block; null: nobody has to be
     */
    public record Joined(@Nullable String owner) {}

    /** Declares a trial with the blocks of whoever declares it. A no where its seed is not there any more. */
    public Decision<Declared> declare(TrialDesign design, int season, BlockMaking making, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            SeasonGateStore.enter(tx, season);
            UUID id = UUID.randomUUID();
            int number = nextNumber(tx);
            tx.insertInto(TRIAL)
                    .set(TRIAL.ID, id)
                    .set(TRIAL.NUMBER, number)
                    .set(TRIAL.KIND, design.kind().word())
                    .set(TRIAL.LOT_ID, design.lot().id())
                    .set(TRIAL.SEASON, season)
                    .set(TRIAL.SEEDS_EACH, design.seedsEach())
                    .set(TRIAL.DECLARED_BY, by)
                    .set(TRIAL.DECLARED_AT, audit.now())
                    .execute();
            design.ways().forEach(way -> addWay(tx, id, way));
            audit.write(tx, by, "declare", "trial", id, "trial " + number);
            for (int block = 1; block <= design.blocks(); block++) {
                addBlock(
                        tx,
                        new Place(id, number, block),
                        design.ways(),
                        design.seedsEach(),
                        design.sowOn(),
                        making,
                        by);
            }
            return new Declared(id, number);
        }));
    }

    /** Adds a block of a member's own. A no where they carry one, the season is another, or the seed is not there. */
    public Decision<Joined> join(Trial trial, int season, LocalDate sowOn, BlockMaking making, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            SeasonGateStore.enter(tx, season);
            if (trial.season() != season) {
                throw Declined.refused(new TrialRefusal.SeasonOver(trial.number(), trial.season()));
            }
            tx.select(TRIAL.ID)
                    .from(TRIAL)
                    .where(TRIAL.ID.eq(trial.id()))
                    .forUpdate()
                    .fetch();
            boolean carried = tx.fetchExists(
                    TRIAL_BLOCK, TRIAL_BLOCK.TRIAL_ID.eq(trial.id()).and(TRIAL_BLOCK.MEMBER_ID.eq(by)));
            if (carried) {
                throw Declined.refused(new TrialRefusal.CarriedAlready(trial.number()));
            }
            int block = 1
                    + tx.select(DSL.coalesce(DSL.max(TRIAL_BLOCK.NUMBER), 0))
                            .from(TRIAL_BLOCK)
                            .where(TRIAL_BLOCK.TRIAL_ID.eq(trial.id()))
                            .fetchSingle()
                            .value1();
            Place place = new Place(trial.id(), trial.number(), block);
            String owner = addBlock(tx, place, trial.ways(), trial.seedsEach(), sowOn, making, by);
            audit.write(tx, by, "join", "trial", trial.id(), "block " + block);
            return new Joined(owner);
        }));
    }

    /** The group's row is held, so that two who declare at once take turns. */
    private static int nextNumber(DSLContext tx) {
        tx.select(GROUP_PROFILE.NAME).from(GROUP_PROFILE).forUpdate().fetch();
        return 1
                + tx.select(DSL.coalesce(DSL.max(TRIAL.NUMBER), 0))
                        .from(TRIAL)
                        .fetchSingle()
                        .value1();
    }

    private static void addWay(DSLContext tx, UUID trial, TrialWay way) {
        tx.insertInto(TRIAL_WAY)
                .set(TRIAL_WAY.TRIAL_ID, trial)
                .set(TRIAL_WAY.LETTER, way.letter())
                .set(TRIAL_WAY.METHOD, way.method().word())
                .set(TRIAL_WAY.WARM, way.warm())
                .set(TRIAL_WAY.CELSIUS, way.celsius())
                .set(TRIAL_WAY.SOAKED, way.soaked())
                .execute();
    }

    private record Place(UUID trial, int number, int block) {}

    private @Nullable String addBlock(
            DSLContext tx,
            Place place,
            List<TrialWay> ways,
            int seedsEach,
            LocalDate sowOn,
            BlockMaking making,
            UUID by) {
        TrialDraw draw = TrialDraw.of(
                draws.getAsInt(), ways.stream().map(TrialWay::letter).toList(), seedsEach);
        tx.insertInto(TRIAL_BLOCK)
                .set(TRIAL_BLOCK.TRIAL_ID, place.trial())
                .set(TRIAL_BLOCK.NUMBER, place.block())
                .set(TRIAL_BLOCK.MEMBER_ID, by)
                .set(TRIAL_BLOCK.SOW_ON, sowOn)
                .set(TRIAL_BLOCK.DRAW, draw.number())
                .set(TRIAL_BLOCK.DEALT, draw.dealt())
                .set(TRIAL_BLOCK.LAID_OUT, draw.laidOut())
                .set(TRIAL_BLOCK.JOINED_AT, audit.now())
                .execute();
        List<PlannedWay> block = making.block(place.number(), draw);
        requireSeeds(tx, block, by);
        SeedClaimStore.Owner owner = null;
        for (PlannedWay planned : block) {
            owner = claims.claim(tx, planned.sowing(), () -> keep(tx, place, planned, by), by)
                    .asked();
        }
        return owner == null ? null : owner.name();
    }

    /** All ways of a block have their seed, or none of it is kept. */
    private void requireSeeds(DSLContext tx, List<PlannedWay> block, UUID member) {
        int needed =
                block.stream().mapToInt(planned -> planned.sowing().seeds()).sum();
        LotBalance balance = balances.held(tx, block.get(0).sowing().lotId());
        Integer free = balance.freeFor(member);
        if (free != null && free < needed) {
            throw Declined.refused(new TrialRefusal.NoSeedsLeft(balance, needed, member));
        }
    }

    private void keep(DSLContext tx, Place place, PlannedWay planned, UUID by) {
        sowings.add(tx, planned.sowing(), by);
        tx.insertInto(TRIAL_SOWING)
                .set(TRIAL_SOWING.SOWING_ID, planned.sowing().id())
                .set(TRIAL_SOWING.TRIAL_ID, place.trial())
                .set(TRIAL_SOWING.BLOCK, place.block())
                .set(TRIAL_SOWING.LETTER, planned.way().letter())
                .execute();
        if (planned.request() != null) {
            requests.add(tx, planned.request());
        }
    }
}
