package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.TableField;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Retires sites, racks, shelves and mats that were used, and brings them back; and the one place that reads what is retired. */
public final class RetirementStore {
    private static final List<TableField<?, LocalDate>> DAYS =
            List.of(SITE.RETIRED_FROM, RACK.RETIRED_FROM, SHELF.RETIRED_FROM, MAT.RETIRED_FROM);

    private final DSLContext sql;
    private final Audit audit;

    public RetirementStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    /** All that is retired, or is to be; where nothing is, one question finds that out. */
    public static Retirements read(DSLContext sql) {
        Map<UUID, LocalDate> parts = sql.select(SITE.ID, SITE.RETIRED_FROM)
                .from(SITE)
                .where(SITE.RETIRED_FROM.isNotNull())
                .unionAll(sql.select(RACK.ID, RACK.RETIRED_FROM).from(RACK).where(RACK.RETIRED_FROM.isNotNull()))
                .unionAll(sql.select(SHELF.ID, SHELF.RETIRED_FROM).from(SHELF).where(SHELF.RETIRED_FROM.isNotNull()))
                .unionAll(sql.select(MAT.ID, MAT.RETIRED_FROM).from(MAT).where(MAT.RETIRED_FROM.isNotNull()))
                .fetchMap(SITE.ID, SITE.RETIRED_FROM);
        if (parts.isEmpty()) {
            return Retirements.NONE;
        }
        Map<UUID, LocalDate> mats = new HashMap<>();
        Map<UUID, LocalDate> places = new HashMap<>();
        OnSiteStore.ofPlaces(sql.select(PLACE.ID, MAT.ID).select(DAYS).from(PLACE))
                .forEach(row -> first(row).ifPresent(day -> {
                    places.put(row.get(PLACE.ID), day);
                    if (row.get(MAT.ID) != null) {
                        mats.put(row.get(MAT.ID), day);
                    }
                }));
        return new Retirements(parts, mats, places);
    }

    private static Optional<LocalDate> first(Record row) {
        return DAYS.stream().map(row::get).flatMap(Stream::ofNullable).min(LocalDate::compareTo);
    }

    public Retirements read() {
        return read(sql);
    }

    /** What lies on it on a day or later, the earliest first: where it lies, by its stay. */
    List<StayBeyond> lyingBeyond(ShelvingPart part, UUID id, LocalDate day) {
        return lyingBeyond(sql, part, id, day);
    }

    private static List<StayBeyond> lyingBeyond(DSLContext sql, ShelvingPart part, UUID id, LocalDate day) {
        return OnSiteStore.ofPlaces(sql.select(STAY.ID, STAY.FROM_DAY, STAY.TO_DAY, PLACE.NUMBER, MAT.NAME)
                        .from(STAY.join(PLACE).on(PLACE.ID.eq(STAY.PLACE_ID))))
                .where(RemovalStore.key(part).eq(id), STAY.TO_DAY.gt(day), STAY.FROM_DAY.lt(STAY.TO_DAY))
                .orderBy(STAY.FROM_DAY, MAT.NAME, PLACE.NUMBER, STAY.FIRST_QUARTER)
                .fetch(row -> new StayBeyond(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        row.value5() == null ? "" : row.value5(),
                        row.value4()));
    }

    /** Nothing lies on it from a day on; a no while something does. */
    Decision<UUID> retire(ShelvingPart part, UUID id, LocalDate from, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            hold(tx, part, id);
            int beyond = lyingBeyond(tx, part, id, from).size();
            if (beyond > 0) {
                throw Declined.refused(new ShelfRefusal.LieBeyond(beyond, from));
            }
            set(tx, part, id, from);
            audit.write(tx, by, "retire", part.word(), id, from.toString());
            return id;
        }));
    }

    /** It is used again; said of what is in use it stays so. */
    Decision<UUID> bringBack(ShelvingPart part, UUID id, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            set(inside.dsl(), part, id, null);
            audit.write(inside.dsl(), by, "bring back", part.word(), id, "");
            return id;
        }));
    }

    /** Whoever lays something on a mat holds it too, so that nobody slips in between. */
    private static void hold(DSLContext tx, ShelvingPart part, UUID id) {
        List<UUID> mats = OnSiteStore.ofMats(tx.select(MAT.ID).from(MAT))
                .where(RemovalStore.key(part).eq(id))
                .fetch(MAT.ID);
        tx.select(MAT.ID)
                .from(MAT)
                .where(MAT.ID.in(mats))
                .orderBy(MAT.ID)
                .forUpdate()
                .fetch();
    }

    private static void set(DSLContext tx, ShelvingPart part, UUID id, @Nullable LocalDate from) {
        Columns columns = columns(part);
        int changed = tx.update(columns.table())
                .set(columns.retiredFrom(), from)
                .set(columns.version(), columns.version().plus(1))
                .where(RemovalStore.key(part).eq(id))
                .execute();
        if (changed == 0) {
            throw Declined.missing();
        }
    }

    /** Where a part says that it is retired. */
    private record Columns(Table<?> table, Field<LocalDate> retiredFrom, Field<Integer> version) {}

    private static Columns columns(ShelvingPart part) {
        return switch (part) {
            case SITE -> new Columns(SITE, SITE.RETIRED_FROM, SITE.VERSION);
            case RACK -> new Columns(RACK, RACK.RETIRED_FROM, RACK.VERSION);
            case SHELF -> new Columns(SHELF, SHELF.RETIRED_FROM, SHELF.VERSION);
            case MAT -> new Columns(MAT, MAT.RETIRED_FROM, MAT.VERSION);
        };
    }
}
