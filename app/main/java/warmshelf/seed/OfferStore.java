package warmshelf.seed;

import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.LOT;

import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Seed that is offered to everybody, and taken. */
public final class OfferStore {
    private static final String SUBJECT = "lot";

    private final Database database;
    private final Audit audit;
    private final LotStore lots;
    private final LotBalanceStore balances;

    public OfferStore(Database database, Audit audit, LotStore lots, LotBalanceStore balances) {
        this.database = database;
        this.audit = audit;
        this.lots = lots;
        this.balances = balances;
    }

    /**
     * Offers so many seeds of a lot, in place of what was offered before; 0 takes the offer back.
     *
     * @return how many are offered; a no when fewer than that are neither promised nor kept back
     */
    public Decision<Integer> offer(UUID lotId, int seeds, UUID by) {
        return Decision.of(() -> database.sql().transactionResult(work -> {
            DSLContext sql = work.dsl();
            LotBalance balance = balances.held(sql, lotId);
            Integer most = balance.canBeOffered();
            if (most != null && seeds > most) {
                throw Declined.refused(new SeedRefusal.TooManyToOffer(balance, seeds));
            }
            sql.update(LOT)
                    .set(LOT.OFFERED, seeds)
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(lotId))
                    .execute();
            audit.write(sql, by, "offer", SUBJECT, lotId, seeds + " seeds");
            return seeds;
        }));
    }

    /**
     * Takes offered seeds, all of them or none, into a new lot of the taker's with the same tests. The lot is held meanwhile, so
     * that two who take at once never get more than was offered.
     *
     * @param newLotId the id of the taker's lot, which is also the answer
     */
    public Decision<UUID> take(Lot from, UUID newLotId, int seeds, UUID taker) {
        return Decision.of(() -> database.sql().transactionResult(work -> {
            DSLContext sql = work.dsl();
            int offered = balances.held(sql, from.id()).offered();
            if (seeds > offered) {
                throw Declined.overtaken(new SeedRefusal.TooFewOffered(offered, seeds));
            }
            sql.update(LOT)
                    .set(LOT.OFFERED, offered - seeds)
                    .set(LOT.SEEDS_LEFT, LOT.SEEDS_LEFT.minus(seeds))
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(from.id()))
                    .execute();
            audit.write(sql, taker, "take offered", SUBJECT, from.id(), "%d seeds into %s".formatted(seeds, newLotId));
            lots.add(sql, newLotId, share(from, seeds, taker), taker);
            sql.update(LOT)
                    .set(LOT.TAKEN_FROM, from.id())
                    .where(LOT.ID.eq(newLotId))
                    .execute();
            copyTests(sql, from.id(), newLotId);
            return newLotId;
        }));
    }

    /** The lot of somebody else that a lot was taken from. */
    Optional<Lot> origin(UUID lotId) {
        return database.sql()
                .select(LOT.TAKEN_FROM)
                .from(LOT)
                .where(LOT.ID.eq(lotId), LOT.TAKEN_FROM.isNotNull())
                .fetchOptional(LOT.TAKEN_FROM)
                .flatMap(lots::find);
    }

    /** A caution in the note goes along, and so does how the seed was kept, until its new owner says otherwise. */
    private static NewLot share(Lot from, int seeds, UUID taker) {
        return new NewLot(
                from.cropId(),
                from.variety(),
                from.seedYear(),
                seeds,
                taker,
                from.treated(),
                from.note(),
                from.source(),
                from.storage());
    }

    /** The same seed, so the same tests; who made them stays. */
    private static void copyTests(DSLContext sql, UUID from, UUID to) {
        sql.selectFrom(GERMINATION_TEST)
                .where(GERMINATION_TEST.LOT_ID.eq(from))
                .fetch()
                .forEach(test -> sql.insertInto(GERMINATION_TEST)
                        .columns(GERMINATION_TEST.fields())
                        .values(
                                UUID.randomUUID(),
                                to,
                                test.getTestedOn(),
                                test.getGerminated(),
                                test.getSeeds(),
                                test.getMadeBy(),
                                test.getMadeAt())
                        .execute());
    }
}
