package warmshelf.shelf;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_STAND_IN;
import static warmshelf.db.generated.Tables.DUTY_WILLING;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Audit;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Deletes sites, racks, shelves and mats that nobody ever used, with what stands on them. */
public final class RemovalStore {
    private static final String FOREIGN_KEY_VIOLATION = "23503";

    private final DSLContext sql;
    private final Audit audit;

    public RemovalStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    /** Why it would not be deleted today; empty: it would. */
    Optional<ShelfRefusal> against(ShelvingPart part, UUID id, LocalDate today) {
        return RemovalJudge.against(use(sql, part, id, today));
    }

    /** Deletes it with the shelves, mats and places on it. */
    Decision<UUID> remove(ShelvingPart part, UUID id, String words, LocalDate today, UUID by) {
        return Decision.of(() -> {
            try {
                return sql.transactionResult(inside -> remove(inside.dsl(), part, id, words, today, by));
            } catch (IntegrityConstraintViolationException used) {
                // whatever else points at it belongs to the history too, or was laid there this moment
                if (FOREIGN_KEY_VIOLATION.equals(used.sqlState())) {
                    throw Declined.refused(new ShelfRefusal.WasUsed());
                }
                throw used;
            }
        });
    }

    private UUID remove(DSLContext tx, ShelvingPart part, UUID id, String words, LocalDate today, UUID by) {
        RemovalJudge.against(use(tx, part, id, today)).ifPresent(no -> {
            throw Declined.refused(no);
        });
        List<UUID> shelves = OnSiteStore.ofShelves(tx.select(SHELF.ID).from(SHELF))
                .where(part == ShelvingPart.MAT ? SHELF.ID.isNull() : key(part).eq(id))
                .fetch(SHELF.ID);
        List<UUID> mats = OnSiteStore.ofMats(tx.select(MAT.ID).from(MAT))
                .where(key(part).eq(id))
                .fetch(MAT.ID);
        tx.deleteFrom(MAT_DAY).where(MAT_DAY.MAT_ID.in(mats)).execute();
        tx.deleteFrom(PLACE)
                .where(PLACE.MAT_ID.in(mats).or(PLACE.LIT_SHELF_ID.in(shelves)))
                .execute();
        int gone = tx.deleteFrom(MAT).where(MAT.ID.in(mats)).execute();
        gone += tx.deleteFrom(SHELF).where(SHELF.ID.in(shelves)).execute();
        gone += tx.deleteFrom(RACK).where(RACK.ID.eq(id)).execute();
        gone += tx.deleteFrom(SITE).where(SITE.ID.eq(id)).execute();
        if (gone == 0) {
            throw Declined.missing();
        }
        audit.write(tx, by, "delete", part.word(), id, words);
        return id;
    }

    private static RemovalJudge.Use use(DSLContext sql, ShelvingPart part, UUID id, LocalDate today) {
        Condition here = key(part).eq(id);
        return new RemovalJudge.Use(
                part == ShelvingPart.SITE ? sql.fetchCount(RACK, RACK.SITE_ID.eq(id)) : 0,
                stays(sql, here.and(STAY.FROM_DAY.le(today)).and(STAY.TO_DAY.gt(today))),
                stays(sql, here.and(STAY.FROM_DAY.gt(today)).and(STAY.FROM_DAY.lt(STAY.TO_DAY))),
                stays(sql, here) > 0 || traces(sql, here, id));
    }

    private static int stays(DSLContext sql, Condition which) {
        return sql.fetchCount(
                OnSiteStore.ofPlaces(sql.select(STAY.ID).from(STAY.join(PLACE).on(PLACE.ID.eq(STAY.PLACE_ID))))
                        .where(which));
    }

    /** Readings, outages and duty; no more is ever written of what nothing lay on. */
    private static boolean traces(DSLContext sql, Condition here, UUID id) {
        return sql.fetchExists(
                        OnSiteStore.ofMats(sql.selectOne().from(MAT.join(ENTRY).on(ENTRY.MAT_ID.eq(MAT.ID))))
                                .where(here))
                || sql.fetchExists(OnSiteStore.ofMats(
                                sql.selectOne().from(MAT.join(MAT_OUT).on(MAT_OUT.MAT_ID.eq(MAT.ID))))
                        .where(here))
                || sql.fetchExists(DUTY, DUTY.SITE_ID.eq(id))
                || sql.fetchExists(DUTY_WILLING, DUTY_WILLING.SITE_ID.eq(id))
                || sql.fetchExists(DUTY_STAND_IN, DUTY_STAND_IN.SITE_ID.eq(id));
    }

    /** By which a question about what stands there is narrowed to a part. */
    static Field<UUID> key(ShelvingPart part) {
        return switch (part) {
            case SITE -> SITE.ID;
            case RACK -> RACK.ID;
            case SHELF -> SHELF.ID;
            case MAT -> MAT.ID;
        };
    }
}
