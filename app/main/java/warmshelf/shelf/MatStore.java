package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PLACE;

import java.time.LocalDate;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Adds and changes the mats of a shelf, with their places. */
public final class MatStore {
    private static final PlaceStore PLACES = new PlaceStore("mat", PLACE.MAT_ID);

    private final DSLContext sql;
    private final Audit audit;

    public MatStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public Decision<UUID> add(UUID shelfId, MatDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return EditStore.make(sql, new ShelfRefusal.MatNameTaken(draft.name()), transaction -> {
            transaction
                    .insertInto(MAT)
                    .set(MAT.ID, id)
                    .set(MAT.SHELF_ID, shelfId)
                    .set(MAT.NAME, draft.name())
                    .set(MAT.WALK_ORDER, draft.walkOrder())
                    .set(MAT.PLACES, draft.places())
                    .set(MAT.THERMOSTAT_LOW_C, draft.lowC())
                    .set(MAT.THERMOSTAT_HIGH_C, draft.highC())
                    .set(MAT.WATTS, draft.watts())
                    .set(MAT.USUAL_C, draft.usualC())
                    .set(MAT.LIGHT, draft.light().kept())
                    .set(MAT.VERSION, 1)
                    .execute();
            PLACES.fit(transaction, id, draft.places());
            audit.write(transaction, by, "add", "mat", id, draft.toString());
            return id;
        });
    }

    /** Changes a mat; set-points already given from {@code today} on must stay within its thermostat's range. */
    public Decision<UUID> change(UUID id, int version, MatDraft draft, UUID by, LocalDate today) {
        return EditStore.make(sql, new ShelfRefusal.MatNameTaken(draft.name()), transaction -> {
            if (PLACES.usedBeyond(transaction, id, draft.places())) {
                throw Declined.refused(new ShelfRefusal.PlacesUsed(draft.places()));
            }
            mustHold(transaction, id, new Thermostat(draft.lowC(), draft.highC()), today);
            int changed = transaction
                    .update(MAT)
                    .set(MAT.NAME, draft.name())
                    .set(MAT.WALK_ORDER, draft.walkOrder())
                    .set(MAT.PLACES, draft.places())
                    .set(MAT.THERMOSTAT_LOW_C, draft.lowC())
                    .set(MAT.THERMOSTAT_HIGH_C, draft.highC())
                    .set(MAT.WATTS, draft.watts())
                    .set(MAT.USUAL_C, draft.usualC())
                    .set(MAT.LIGHT, draft.light().kept())
                    .set(MAT.VERSION, version + 1)
                    .where(MAT.ID.eq(id), MAT.VERSION.eq(version))
                    .execute();
            EditStore.mustHaveChanged(changed);
            PLACES.fit(transaction, id, draft.places());
            audit.write(transaction, by, "change", "mat", id, draft.toString());
            return id;
        });
    }

    /** The mat may be set beyond a new thermostat's range only on days that are over. */
    private static void mustHold(DSLContext transaction, UUID matId, Thermostat thermostat, LocalDate today) {
        transaction
                .selectFrom(MAT_DAY)
                .where(MAT_DAY.MAT_ID.eq(matId), MAT_DAY.ON_DAY.ge(today))
                .orderBy(MAT_DAY.ON_DAY)
                .fetch()
                .stream()
                .filter(day -> !thermostat.contains(day.getCelsius()))
                .findFirst()
                .ifPresent(day -> {
                    throw Declined.refused(
                            new ShelfRefusal.SetPointOutside(thermostat, day.getCelsius(), day.getOnDay()));
                });
    }
}
