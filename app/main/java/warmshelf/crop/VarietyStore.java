package warmshelf.crop;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.VARIETY;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;

/** How soon single varieties bear. */
public final class VarietyStore {
    private final Database database;
    private final Audit audit;
    private final Runnable afterWriting;

    VarietyStore(Database database, Audit audit, Runnable afterWriting) {
        this.database = database;
        this.audit = audit;
        this.afterWriting = afterWriting;
    }

    /** All of them, by crop and name. */
    List<Variety> all() {
        return database.sql()
                .select(VARIETY.asterisk(), MEMBER.CALLED)
                .from(VARIETY)
                .join(MEMBER)
                .on(MEMBER.ID.eq(VARIETY.MADE_BY))
                .orderBy(VARIETY.CROP_ID, VARIETY.NAME_KEY)
                .fetch(VarietyStore::variety);
    }

    /**
     * Writes how soon a variety bears.
     *
     * @param shown the version that was shown; 0 where nothing had been written
     * @return the version that was written; overtaken when somebody else was first
     */
    public Decision<Integer> write(
            String cropId, String name, DaysToMaturity maturity, String source, int shown, UUID by) {
        try {
            boolean first = database.sql().transactionResult(work -> {
                boolean written = shown == 0
                        ? insert(work.dsl(), cropId, name, maturity, source, by)
                        : update(work.dsl(), cropId, name, maturity, source, shown, by);
                if (written) {
                    audit.write(
                            work.dsl(), by, "write", "variety", cropId, "%s: %s, %s".formatted(name, maturity, source));
                }
                return written;
            });
            afterWriting.run();
            return first ? new Decision.Done<>(shown + 1) : new Decision.Overtaken<>(new VarietyChanged());
        } catch (IntegrityConstraintViolationException somebodyElseWas) {
            afterWriting.run();
            return new Decision.Overtaken<>(new VarietyChanged());
        }
    }

    private boolean insert(
            DSLContext sql, String cropId, String name, DaysToMaturity maturity, String source, UUID by) {
        return sql.insertInto(VARIETY)
                        .set(VARIETY.CROP_ID, cropId)
                        .set(VARIETY.NAME_KEY, Variety.key(name))
                        .set(columns(name, maturity, source, by))
                        .set(VARIETY.VERSION, 1)
                        .execute()
                == 1;
    }

    private boolean update(
            DSLContext sql, String cropId, String name, DaysToMaturity maturity, String source, int shown, UUID by) {
        return sql.update(VARIETY)
                        .set(columns(name, maturity, source, by))
                        .set(VARIETY.VERSION, VARIETY.VERSION.plus(1))
                        .where(VARIETY.CROP_ID
                                .eq(cropId)
                                .and(VARIETY.NAME_KEY.eq(Variety.key(name)))
                                .and(VARIETY.VERSION.eq(shown)))
                        .execute()
                == 1;
    }

    private Map<Field<?>, Object> columns(String name, DaysToMaturity maturity, String source, UUID by) {
        return Map.of(
                VARIETY.NAME,
                name,
                VARIETY.MATURITY_MIN,
                maturity.min(),
                VARIETY.MATURITY_MAX,
                maturity.max(),
                VARIETY.MATURITY_BASIS,
                maturity.basis().word(),
                VARIETY.SOURCE,
                source,
                VARIETY.MADE_BY,
                by,
                VARIETY.MADE_AT,
                audit.now());
    }

    private static Variety variety(Record row) {
        return new Variety(
                row.get(VARIETY.CROP_ID),
                row.get(VARIETY.NAME),
                new DaysToMaturity(
                        row.get(VARIETY.MATURITY_MIN),
                        row.get(VARIETY.MATURITY_MAX),
                        Basis.named(row.get(VARIETY.MATURITY_BASIS))),
                row.get(VARIETY.SOURCE),
                row.get(VARIETY.VERSION),
                row.get(MEMBER.CALLED),
                row.get(VARIETY.MADE_AT));
    }
}
