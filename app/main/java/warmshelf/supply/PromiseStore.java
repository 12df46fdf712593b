package warmshelf.supply;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SUPPLY_PROMISE;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;

/** Who brings what. A promise that is taken back stays in the table and counts no more. */
public final class PromiseStore {
    private static final String SUBJECT = "supply promise";

    private final Database database;
    private final Audit audit;

    public PromiseStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** The promises of a season that stand, the oldest first. Whoever has left brings nothing more; what they brought is there. */
    List<Promise> ofSeason(int season) {
        return promises(SUPPLY_PROMISE
                .SEASON
                .eq(season)
                .and(SUPPLY_PROMISE.BROUGHT_AT.isNotNull().or(MEMBER.LEFT_AT.isNull())));
    }

    /** A promise that stands. */
    Optional<Promise> find(UUID id) {
        return promises(SUPPLY_PROMISE.ID.eq(id)).stream().findFirst();
    }

    private List<Promise> promises(Condition which) {
        return database.sql()
                .select(SUPPLY_PROMISE.asterisk(), MEMBER.CALLED)
                .from(SUPPLY_PROMISE)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(SUPPLY_PROMISE.MEMBER_ID))
                .where(which, SUPPLY_PROMISE.TAKEN_BACK_AT.isNull())
                .orderBy(SUPPLY_PROMISE.MADE_AT, SUPPLY_PROMISE.ID)
                .fetch(PromiseStore::promise);
    }

    private static Promise promise(Record row) {
        return new Promise(
                row.get(SUPPLY_PROMISE.ID),
                SupplyItem.named(row.get(SUPPLY_PROMISE.ITEM)).orElseThrow(),
                row.get(SUPPLY_PROMISE.AMOUNT).doubleValue(),
                row.get(SUPPLY_PROMISE.MEMBER_ID),
                row.get(MEMBER.CALLED),
                row.get(SUPPLY_PROMISE.NOTE),
                row.get(SUPPLY_PROMISE.BROUGHT_AT) != null);
    }

    /** Keeps a promise once, however often its form is sent. What is in the cupboard is there at once. */
    public void add(UUID id, int season, NewPromise promise, UUID by) {
        database.sql().transaction(work -> {
            DSLContext sql = work.dsl();
            int added = sql.insertInto(SUPPLY_PROMISE)
                    .set(SUPPLY_PROMISE.ID, id)
                    .set(SUPPLY_PROMISE.SEASON, season)
                    .set(SUPPLY_PROMISE.ITEM, promise.item().word())
                    .set(SUPPLY_PROMISE.AMOUNT, BigDecimal.valueOf(promise.amount()))
                    .set(SUPPLY_PROMISE.MEMBER_ID, promise.there() ? null : by)
                    .set(SUPPLY_PROMISE.NOTE, promise.note())
                    .set(SUPPLY_PROMISE.MADE_BY, by)
                    .set(SUPPLY_PROMISE.MADE_AT, audit.now())
                    .set(SUPPLY_PROMISE.BROUGHT_BY, promise.there() ? by : null)
                    .set(SUPPLY_PROMISE.BROUGHT_AT, promise.there() ? audit.now() : null)
                    .onConflictDoNothing()
                    .execute();
            if (added == 1) {
                String detail =
                        "%s %s".formatted(promise.amount(), promise.item().word());
                audit.write(sql, by, promise.there() ? "note" : "promise", SUBJECT, id, detail);
            }
        });
    }

    /** Notes that it is there. */
    public void bring(UUID id, UUID by) {
        database.sql().transaction(work -> {
            int changed = work.dsl()
                    .update(SUPPLY_PROMISE)
                    .set(SUPPLY_PROMISE.BROUGHT_BY, by)
                    .set(SUPPLY_PROMISE.BROUGHT_AT, audit.now())
                    .where(SUPPLY_PROMISE.ID.eq(id), SUPPLY_PROMISE.BROUGHT_AT.isNull())
                    .execute();
            if (changed == 1) {
                audit.write(work.dsl(), by, "bring", SUBJECT, id, "");
            }
        });
    }

    /** Notes that it is not there after all. What is in the cupboard is taken back instead. */
    void unbring(UUID id, UUID by) {
        database.sql().transaction(work -> {
            int changed = work.dsl()
                    .update(SUPPLY_PROMISE)
                    .setNull(SUPPLY_PROMISE.BROUGHT_BY)
                    .setNull(SUPPLY_PROMISE.BROUGHT_AT)
                    .where(SUPPLY_PROMISE.ID.eq(id), SUPPLY_PROMISE.MEMBER_ID.isNotNull())
                    .and(SUPPLY_PROMISE.BROUGHT_AT.isNotNull())
                    .execute();
            if (changed == 1) {
                audit.write(work.dsl(), by, "not brought", SUBJECT, id, "");
            }
        });
    }

    /**
     * Has a promise be of another amount, in millilitres or pieces.
     *
     * @param read the amount that was shown when the change was made
     * @return the amount that it is of now; overtaken where it was of another by then, or taken back
     */
    Decision<Double> change(UUID id, double read, double amount, UUID by) {
        return database.sql().transactionResult(work -> {
            int changed = work.dsl()
                    .update(SUPPLY_PROMISE)
                    .set(SUPPLY_PROMISE.AMOUNT, BigDecimal.valueOf(amount))
                    .where(SUPPLY_PROMISE.ID.eq(id), SUPPLY_PROMISE.AMOUNT.eq(BigDecimal.valueOf(read)))
                    .and(SUPPLY_PROMISE.TAKEN_BACK_AT.isNull())
                    .execute();
            if (changed == 0) {
                return new Decision.Overtaken<>(new PromiseChanged());
            }
            audit.write(work.dsl(), by, "change", SUBJECT, id, "from %s to %s".formatted(read, amount));
            return new Decision.Done<>(amount);
        });
    }

    /** Whether there was such a promise and it was taken back. */
    boolean isTakenBack(UUID id) {
        return database.sql()
                .fetchExists(SUPPLY_PROMISE, SUPPLY_PROMISE.ID.eq(id), SUPPLY_PROMISE.TAKEN_BACK_AT.isNotNull());
    }

    /** Takes a promise back, or what is in the cupboard out of it. */
    void takeBack(UUID id, UUID by) {
        database.sql().transaction(work -> {
            int changed = work.dsl()
                    .update(SUPPLY_PROMISE)
                    .set(SUPPLY_PROMISE.TAKEN_BACK_BY, by)
                    .set(SUPPLY_PROMISE.TAKEN_BACK_AT, audit.now())
                    .where(SUPPLY_PROMISE.ID.eq(id), SUPPLY_PROMISE.TAKEN_BACK_AT.isNull())
                    .execute();
            if (changed == 1) {
                audit.write(work.dsl(), by, "take back", SUBJECT, id, "");
            }
        });
    }
}
