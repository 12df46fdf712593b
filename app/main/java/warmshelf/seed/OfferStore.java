package warmshelf.seed;

import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.LOT;

import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.Taking.Taken;
import warmshelf.seed.Taking.TooFew;

/** Seed that is offered to everybody, and taken. */
public final class OfferStore {
    private static final String SUBJECT = "lot";

    private final Database database;
    private final Audit audit;
    private final LotStore lots;

    public OfferStore(Database database, Audit audit, LotStore lots) {
        this.database = database;
        this.audit = audit;
        this.lots = lots;
    }

    /**
     * Offers so many seeds of a lot, in place of what was offered before; 0 takes the offer back.
     *
     * @return {@link TooFew} when the lot has fewer seeds than that
     */
    public Taking offer(UUID lotId, int seeds, UUID by) {
        return database.sql().transactionResult(work -> {
            DSLContext sql = work.dsl();
            int changed = sql.update(LOT)
                    .set(LOT.OFFERED, seeds)
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(lotId), LOT.SEEDS_LEFT.isNull().or(LOT.SEEDS_LEFT.ge(seeds)))
                    .execute();
            if (changed == 0) {
                Integer left = sql.select(LOT.SEEDS_LEFT)
                        .from(LOT)
                        .where(LOT.ID.eq(lotId))
                        .fetchSingle()
                        .value1();
                return new TooFew(left == null ? 0 : left, seeds);
            }
            audit.write(sql, by, "offer", SUBJECT, lotId, seeds + " seeds");
            return new Taken();
        });
    }

    /**
     * Takes offered seeds, all of them or none, into a new lot of the taker's with the same tests. The conditions stand in the
     * update itself, so that two who take at once never get more than was offered.
     *
     * @param newLotId the id of the taker's lot
     */
    public Taking take(Lot from, UUID newLotId, int seeds, UUID taker) {
        return database.sql().transactionResult(work -> {
            DSLContext sql = work.dsl();
            int changed = sql.update(LOT)
                    .set(LOT.OFFERED, LOT.OFFERED.minus(seeds))
                    .set(LOT.SEEDS_LEFT, LOT.SEEDS_LEFT.minus(seeds))
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(from.id()), LOT.OFFERED.ge(seeds))
                    .execute();
            if (changed == 0) {
                int offered = sql.select(LOT.OFFERED)
                        .from(LOT)
                        .where(LOT.ID.eq(from.id()))
                        .fetchSingle()
                        .value1();
                return new TooFew(offered, seeds);
            }
            audit.write(sql, taker, "take offered", SUBJECT, from.id(), "%d seeds into %s".formatted(seeds, newLotId));
            lots.add(sql, newLotId, share(from, seeds, taker), taker);
            sql.update(LOT)
                    .set(LOT.TAKEN_FROM, from.id())
                    .where(LOT.ID.eq(newLotId))
                    .execute();
            copyTests(sql, from.id(), newLotId);
            return new Taken();
        });
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
