package warmshelf.exchange;

import static warmshelf.db.generated.Tables.INCOMING_TABLE;
import static warmshelf.db.generated.Tables.MEMBER;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Which files were taken in. */
final class IncomingLogStore {
    private static final int MOST_LISTED = 20;

    private final Database database;
    private final Audit audit;

    IncomingLogStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** Notes within the caller's transaction that a file is taken in. */
    void add(DSLContext within, UUID id, IncomingOrder order, int taken, int there) {
        within.insertInto(INCOMING_TABLE)
                .set(INCOMING_TABLE.ID, id)
                .set(INCOMING_TABLE.KIND, order.kind().word())
                .set(INCOMING_TABLE.FILE_NAME, order.fileName())
                .set(INCOMING_TABLE.FINGERPRINT, order.fingerprint())
                .set(INCOMING_TABLE.ROWS_TAKEN, taken)
                .set(INCOMING_TABLE.ROWS_THERE, there)
                .set(
                        INCOMING_TABLE.THERMOMETER_ID,
                        order.thermometer() == null ? null : order.thermometer().id())
                .set(INCOMING_TABLE.TAKEN_BY, order.by())
                .set(INCOMING_TABLE.TAKEN_AT, audit.now())
                .execute();
        audit.write(
                within,
                order.by(),
                "take in",
                "table",
                id,
                "%s: %d rows".formatted(order.kind().word(), taken));
    }

    /** The files taken in last, the newest first: of everybody for coordinators, else a person's own. */
    List<TakenTable> latest(UUID visitor, boolean coordinator, ZoneId zone) {
        return taken(coordinator ? DSL.noCondition() : INCOMING_TABLE.TAKEN_BY.eq(visitor))
                .orderBy(INCOMING_TABLE.TAKEN_AT.desc(), INCOMING_TABLE.ID)
                .limit(MOST_LISTED)
                .fetch(row -> takenTable(row, zone));
    }

    /** The file of an id, where it was taken in. */
    Optional<TakenTable> find(UUID id, ZoneId zone) {
        return taken(INCOMING_TABLE.ID.eq(id)).fetchOptional(row -> takenTable(row, zone));
    }

    /** When the very same file was taken in before, where it was: last, for the same thermometer if it has nights. */
    Optional<TakenTable> before(IncomingOrder order, ZoneId zone) {
        return taken(INCOMING_TABLE
                        .FINGERPRINT
                        .eq(order.fingerprint())
                        .and(INCOMING_TABLE.KIND.eq(order.kind().word()))
                        .and(INCOMING_TABLE.THERMOMETER_ID.isNotDistinctFrom(
                                order.thermometer() == null
                                        ? null
                                        : order.thermometer().id())))
                .orderBy(INCOMING_TABLE.TAKEN_AT.desc())
                .limit(1)
                .fetchOptional(row -> takenTable(row, zone));
    }

    private SelectConditionStep<? extends Record> taken(Condition which) {
        return database.sql()
                .select(INCOMING_TABLE.asterisk(), MEMBER.CALLED)
                .from(INCOMING_TABLE)
                .join(MEMBER)
                .on(MEMBER.ID.eq(INCOMING_TABLE.TAKEN_BY))
                .where(which);
    }

    private static TakenTable takenTable(Record row, ZoneId zone) {
        return new TakenTable(
                IncomingKind.named(row.get(INCOMING_TABLE.KIND)).orElseThrow(),
                row.get(INCOMING_TABLE.FILE_NAME),
                row.get(INCOMING_TABLE.ROWS_TAKEN),
                row.get(INCOMING_TABLE.ROWS_THERE),
                row.get(INCOMING_TABLE.TAKEN_BY),
                row.get(MEMBER.CALLED),
                row.get(INCOMING_TABLE.TAKEN_AT).atZoneSameInstant(zone).toLocalDate());
    }
}
