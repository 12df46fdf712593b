package warmshelf.seed;

import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.SelectOnConditionStep;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;

/** The box of lots in the database. */
public final class LotStore {
    private static final String SUBJECT = "lot";

    private final Database database;
    private final Audit audit;

    public LotStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    public UUID add(NewLot lot, UUID by) {
        return database.sql().transactionResult(work -> add(work.dsl(), lot, by));
    }

    /** Adds a lot within the caller's transaction. */
    public UUID add(DSLContext within, NewLot lot, UUID by) {
        UUID id = UUID.randomUUID();
        add(within, id, lot, by);
        return id;
    }

    /** Adds a lot of that id within the caller's transaction. */
    public void add(DSLContext within, UUID id, NewLot lot, UUID by) {
        within.insertInto(LOT)
                .set(LOT.ID, id)
                .set(LOT.CROP_ID, lot.cropId())
                .set(LOT.VARIETY, lot.variety())
                .set(LOT.SEED_YEAR, lot.seedYear())
                .set(LOT.SEEDS_LEFT, lot.seedsLeft())
                .set(LOT.OWNER_ID, lot.ownerId())
                .set(LOT.TREATED, lot.treated())
                .set(LOT.NOTE, lot.note())
                .set(LOT.SOURCE, lot.source().word())
                .set(kept(lot.storage()))
                .set(LOT.MADE_BY, by)
                .set(LOT.MADE_AT, audit.now())
                .set(LOT.VERSION, 1)
                .execute();
        audit.write(
                within, by, "add", SUBJECT, id, "%s '%s' %d".formatted(lot.cropId(), lot.variety(), lot.seedYear()));
    }

    public Optional<Lot> find(UUID id) {
        return find(database.sql(), id);
    }

    /** The lot of that id, read within a transaction. */
    public Optional<Lot> find(DSLContext within, UUID id) {
        return lots(within).where(LOT.ID.eq(id)).fetchOptional(LotStore::lot);
    }

    /** The lot, held until the transaction ends, so that two who change what is left of it take turns. */
    public Lot hold(DSLContext within, UUID id) {
        within.select(LOT.ID).from(LOT).where(LOT.ID.eq(id)).forUpdate().fetchSingle();
        return find(within, id).orElseThrow();
    }

    /** The lots of these ids. */
    public List<Lot> all(Collection<UUID> ids) {
        return lots().where(LOT.ID.in(ids)).fetch(LotStore::lot);
    }

    /** The lots found, by crop, variety and year, the newest first; one more than a page holds where there are more. */
    public List<Lot> list(LotSearch search) {
        return lots().where(matching(search))
                .orderBy(LOT.CROP_ID, DSL.lower(LOT.VARIETY), LOT.SEED_YEAR.desc(), LOT.ID)
                .limit(LotSearch.LOTS_PER_PAGE + 1)
                .offset(search.page() * LotSearch.LOTS_PER_PAGE)
                .fetch(LotStore::lot);
    }

    /** The names of all varieties in the box. */
    public List<String> varieties() {
        return database.sql()
                .selectDistinct(LOT.VARIETY)
                .from(LOT)
                .orderBy(LOT.VARIETY)
                .fetch(LOT.VARIETY);
    }

    /** Every lot that may still have seed in it, by crop, variety and year. */
    public List<Lot> withSeed() {
        return lots().where(LOT.SEEDS_LEFT.isNull().or(LOT.SEEDS_LEFT.gt(0)))
                .orderBy(LOT.CROP_ID, DSL.lower(LOT.VARIETY), LOT.SEED_YEAR.desc(), LOT.ID)
                .fetch(LotStore::lot);
    }

    /** The tests of a lot, the newest first. */
    public List<GerminationTest> tests(UUID lotId) {
        return testsOf(List.of(lotId)).getOrDefault(lotId, List.of());
    }

    /** The tests of several lots, the newest first. */
    public Map<UUID, List<GerminationTest>> testsOf(Collection<UUID> lotIds) {
        return database.sql()
                .selectFrom(GERMINATION_TEST)
                .where(GERMINATION_TEST.LOT_ID.in(lotIds))
                .orderBy(GERMINATION_TEST.TESTED_ON.desc(), GERMINATION_TEST.MADE_AT.desc())
                .fetchGroups(
                        GERMINATION_TEST.LOT_ID,
                        test -> new GerminationTest(test.getTestedOn(), test.getGerminated(), test.getSeeds()));
    }

    /** Records a test, which never overwrites an earlier one. */
    public void recordTest(UUID lotId, GerminationTest test, UUID by) {
        database.sql().transaction(work -> recordTest(work.dsl(), lotId, test, by));
    }

    /** Records a test within the caller's transaction. */
    public void recordTest(DSLContext within, UUID lotId, GerminationTest test, UUID by) {
        within.insertInto(GERMINATION_TEST)
                .set(GERMINATION_TEST.ID, UUID.randomUUID())
                .set(GERMINATION_TEST.LOT_ID, lotId)
                .set(GERMINATION_TEST.TESTED_ON, test.testedOn())
                .set(GERMINATION_TEST.GERMINATED, test.germinated())
                .set(GERMINATION_TEST.SEEDS, test.seeds())
                .set(GERMINATION_TEST.MADE_BY, by)
                .set(GERMINATION_TEST.MADE_AT, audit.now())
                .execute();
        String detail = "%d of %d on %s".formatted(test.germinated(), test.seeds(), test.testedOn());
        audit.write(within, by, "test", SUBJECT, lotId, detail);
    }

    /**
     * Writes what was counted and noted, unless someone else changed the lot since.
     *
     * @param version the lot's version when its figures were shown
     * @return the version that it has now
     */
    public Decision<Integer> recount(UUID lotId, Recount recount, int version, UUID by) {
        return database.sql().transactionResult(work -> {
            int changed = work.dsl()
                    .update(LOT)
                    .set(LOT.COUNTS, countsAfter(recount.seedsLeft()))
                    .set(LOT.SEEDS_LEFT, recount.seedsLeft())
                    .set(LOT.TREATED, recount.treated())
                    .set(LOT.NOTE, recount.note())
                    .set(LOT.SOURCE, recount.source().word())
                    .set(kept(recount.storage()))
                    .set(LOT.OFFERED, offeredOf(DSL.val(recount.seedsLeft(), LOT.SEEDS_LEFT)))
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(lotId).and(LOT.VERSION.eq(version)))
                    .execute();
            if (changed == 0) {
                return new Decision.Overtaken<>(new SeedRefusal.LotChanged());
            }
            audit.write(work.dsl(), by, "recount", SUBJECT, lotId, "seeds left: " + recount.seedsLeft());
            return new Decision.Done<>(version + 1);
        });
    }

    /**
     * Takes seeds within the caller's transaction, all of them or none. The condition stands in the update itself, so that
     * two people taking at once can never bring a lot below nothing.
     *
     * @return how many were written off: none of a lot that nobody has counted
     */
    public Decision<Integer> take(DSLContext within, UUID lotId, int seeds, UUID by) {
        if (seeds < 1) {
            throw new IllegalArgumentException("at least one seed is taken, was " + seeds);
        }
        int changed = within.update(LOT)
                .set(LOT.SEEDS_LEFT, LOT.SEEDS_LEFT.minus(seeds))
                .set(LOT.OFFERED, offeredOf(LOT.SEEDS_LEFT.minus(seeds)))
                .set(LOT.VERSION, LOT.VERSION.plus(1))
                .where(LOT.ID.eq(lotId).and(LOT.SEEDS_LEFT.ge(seeds)))
                .execute();
        if (changed == 1) {
            audit.write(within, by, "take", SUBJECT, lotId, seeds + " seeds");
            return new Decision.Done<>(seeds);
        }
        Integer left = within.select(LOT.SEEDS_LEFT)
                .from(LOT)
                .where(LOT.ID.eq(lotId))
                .fetchSingle()
                .value1();
        return left == null ? new Decision.Done<>(0) : new Decision.Refused<>(new SeedRefusal.TooFewLeft(left, seeds));
    }

    /**
     * Puts seeds back that were taken by mistake, within the caller's transaction. A lot that was counted after they were taken
     * stays as it was counted, and one that nobody has counted stays so.
     *
     * @param counts how often the lot had been counted when they were taken
     */
    public void putBack(DSLContext within, UUID lotId, int seeds, int counts, UUID by) {
        int changed = within.update(LOT)
                .set(LOT.SEEDS_LEFT, LOT.SEEDS_LEFT.plus(seeds))
                .set(LOT.VERSION, LOT.VERSION.plus(1))
                .where(LOT.ID.eq(lotId), LOT.COUNTS.eq(counts), LOT.SEEDS_LEFT.isNotNull())
                .execute();
        if (changed == 1) {
            audit.write(within, by, "put back", SUBJECT, lotId, seeds + " seeds");
        }
    }

    /** Whoever corrects only a note has not counted, so the same figure again is no count. */
    private static Field<Integer> countsAfter(@Nullable Integer counted) {
        return DSL.when(LOT.SEEDS_LEFT.isNotDistinctFrom(counted), LOT.COUNTS).otherwise(LOT.COUNTS.plus(1));
    }

    /** What may still be offered when so many are left: never more than there are. */
    private static Field<Integer> offeredOf(Field<Integer> left) {
        return DSL.when(left.lt(LOT.OFFERED), left).otherwise(LOT.OFFERED);
    }

    private static Map<Field<?>, @Nullable Object> kept(Storage storage) {
        StorageKind.Conditions measured = storage.measured();
        Map<Field<?>, @Nullable Object> columns = new HashMap<>();
        columns.put(LOT.STORAGE, storage.kind().word());
        columns.put(LOT.STORAGE_C, measured == null ? null : BigDecimal.valueOf(measured.celsius()));
        columns.put(LOT.STORAGE_MOISTURE, measured == null ? null : BigDecimal.valueOf(measured.moisturePercent()));
        return columns;
    }

    private static Storage storage(Record row) {
        BigDecimal celsius = row.get(LOT.STORAGE_C);
        BigDecimal moisture = row.get(LOT.STORAGE_MOISTURE);
        StorageKind kind = StorageKind.named(row.get(LOT.STORAGE));
        return kind == StorageKind.OWN && celsius != null && moisture != null
                ? Storage.measured(celsius.doubleValue(), moisture.doubleValue())
                : Storage.of(kind);
    }

    private SelectOnConditionStep<Record> lots() {
        return lots(database.sql());
    }

    private static SelectOnConditionStep<Record> lots(DSLContext from) {
        return from.select(LOT.asterisk(), MEMBER.CALLED)
                .from(LOT)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(LOT.OWNER_ID));
    }

    private static Condition matching(LotSearch search) {
        if (search.text().isEmpty()) {
            return DSL.noCondition();
        }
        String text = search.text().toLowerCase(Locale.ROOT);
        return DSL.lower(LOT.VARIETY)
                .contains(text)
                .or(LOT.CROP_ID.in(search.cropIds()))
                .or(LOT.VARIETY.in(search.varieties()));
    }

    private static Lot lot(Record row) {
        return new Lot(
                row.get(LOT.ID),
                row.get(LOT.CROP_ID),
                row.get(LOT.VARIETY),
                row.get(LOT.SEED_YEAR),
                row.get(LOT.SEEDS_LEFT),
                row.get(LOT.OWNER_ID),
                row.get(MEMBER.CALLED),
                row.get(LOT.TREATED),
                row.get(LOT.NOTE),
                SeedSource.named(row.get(LOT.SOURCE)),
                storage(row),
                row.get(LOT.OFFERED),
                row.get(LOT.VERSION));
    }
}
