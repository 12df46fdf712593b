package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.TableField;
import warmshelf.db.Audit;
import warmshelf.db.generated.tables.records.MatDayRecord;
import warmshelf.db.generated.tables.records.PlaceRecord;
import warmshelf.words.Units;

/** Changes shelves and mats, together with the places they offer. */
public final class MatStore {
    private final DSLContext sql;
    private final Audit audit;

    public MatStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public EditOutcome addShelf(UUID rackId, ShelfDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return StandStore.within(sql, levelTaken(draft), transaction -> {
            transaction
                    .insertInto(SHELF)
                    .set(SHELF.ID, id)
                    .set(SHELF.RACK_ID, rackId)
                    .set(SHELF.FROM_TOP, draft.fromTop())
                    .set(SHELF.LIT_PLACES, draft.litPlaces())
                    .set(SHELF.LIGHT_WATTS, draft.lightWatts())
                    .set(SHELF.VERSION, 1)
                    .execute();
            fitPlaces(transaction, "lit", PLACE.LIT_SHELF_ID, id, draft.litPlaces());
            audit.write(transaction, by, "add", "shelf", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    public EditOutcome changeShelf(UUID id, int version, ShelfDraft draft, UUID by) {
        return StandStore.within(sql, levelTaken(draft), transaction -> {
            if (usedBeyond(transaction, PLACE.LIT_SHELF_ID, id, draft.litPlaces())) {
                return placesUsed("litPlaces", "Places under light", draft.litPlaces());
            }
            int changed = transaction
                    .update(SHELF)
                    .set(SHELF.FROM_TOP, draft.fromTop())
                    .set(SHELF.LIT_PLACES, draft.litPlaces())
                    .set(SHELF.LIGHT_WATTS, draft.lightWatts())
                    .set(SHELF.VERSION, version + 1)
                    .where(SHELF.ID.eq(id), SHELF.VERSION.eq(version))
                    .execute();
            if (changed == 0) {
                return new EditOutcome.ChangedMeanwhile();
            }
            fitPlaces(transaction, "lit", PLACE.LIT_SHELF_ID, id, draft.litPlaces());
            audit.write(transaction, by, "change", "shelf", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    public EditOutcome addMat(UUID shelfId, MatDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return StandStore.within(sql, nameTaken(draft), transaction -> {
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
                    .set(MAT.VERSION, 1)
                    .execute();
            fitPlaces(transaction, "mat", PLACE.MAT_ID, id, draft.places());
            audit.write(transaction, by, "add", "mat", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    /**
     * Changes a mat; set-points already given from {@code today} on must stay within its thermostat's range.
     *
     * @param units in which a refusal names temperatures
     */
    public EditOutcome changeMat(UUID id, int version, MatDraft draft, UUID by, LocalDate today, Units units) {
        return StandStore.within(sql, nameTaken(draft), transaction -> {
            if (usedBeyond(transaction, PLACE.MAT_ID, id, draft.places())) {
                return placesUsed("places", "Places", draft.places());
            }
            Optional<MatDayRecord> outside = setPointOutside(transaction, id, draft, today);
            if (outside.isPresent()) {
                return setPointInTheWay(outside.get(), draft, units);
            }
            int changed = transaction
                    .update(MAT)
                    .set(MAT.NAME, draft.name())
                    .set(MAT.WALK_ORDER, draft.walkOrder())
                    .set(MAT.PLACES, draft.places())
                    .set(MAT.THERMOSTAT_LOW_C, draft.lowC())
                    .set(MAT.THERMOSTAT_HIGH_C, draft.highC())
                    .set(MAT.WATTS, draft.watts())
                    .set(MAT.USUAL_C, draft.usualC())
                    .set(MAT.VERSION, version + 1)
                    .where(MAT.ID.eq(id), MAT.VERSION.eq(version))
                    .execute();
            if (changed == 0) {
                return new EditOutcome.ChangedMeanwhile();
            }
            fitPlaces(transaction, "mat", PLACE.MAT_ID, id, draft.places());
            audit.write(transaction, by, "change", "mat", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    /** Whether something lies, lay or will lie on a place that would go. */
    private static boolean usedBeyond(
            DSLContext transaction, TableField<PlaceRecord, UUID> owner, UUID ownerId, int places) {
        return transaction.fetchExists(transaction
                .selectOne()
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .where(owner.eq(ownerId), PLACE.NUMBER.gt(places)));
    }

    private static Optional<MatDayRecord> setPointOutside(
            DSLContext transaction, UUID matId, MatDraft draft, LocalDate today) {
        Thermostat thermostat = new Thermostat(draft.lowC(), draft.highC());
        return transaction
                .selectFrom(MAT_DAY)
                .where(MAT_DAY.MAT_ID.eq(matId), MAT_DAY.ON_DAY.ge(today))
                .orderBy(MAT_DAY.ON_DAY)
                .fetch()
                .stream()
                .filter(day -> !thermostat.contains(day.getCelsius()))
                .findFirst();
    }

    private static void fitPlaces(
            DSLContext transaction, String kind, TableField<PlaceRecord, UUID> owner, UUID ownerId, int places) {
        transaction
                .deleteFrom(PLACE)
                .where(owner.eq(ownerId), PLACE.NUMBER.gt(places))
                .execute();
        int present = transaction.fetchCount(PLACE, owner.eq(ownerId));
        for (int number = present + 1; number <= places; number++) {
            transaction
                    .insertInto(PLACE)
                    .set(PLACE.ID, UUID.randomUUID())
                    .set(PLACE.KIND, kind)
                    .set(owner, ownerId)
                    .set(PLACE.NUMBER, number)
                    .execute();
        }
    }

    private static EditOutcome.Refused placesUsed(String field, String label, int places) {
        return new EditOutcome.Refused(
                field,
                "%s was %d, but trays lie or lay on a place above that; keep at least the places that have been used."
                        .formatted(label, places));
    }

    private static EditOutcome.Refused setPointInTheWay(MatDayRecord day, MatDraft draft, Units units) {
        return new EditOutcome.Refused(
                "low",
                "The thermostat range was %s, but this mat is set to %s on %s; move what lies there first."
                        .formatted(
                                units.temperatureRange(draft.lowC(), draft.highC()),
                                units.temperature(day.getCelsius()),
                                day.getOnDay()));
    }

    private static EditOutcome.Refused levelTaken(ShelfDraft draft) {
        return new EditOutcome.Refused(
                "fromTop",
                "Level from the top was %d; this rack has a shelf there already, please choose another level."
                        .formatted(draft.fromTop()));
    }

    private static EditOutcome.Refused nameTaken(MatDraft draft) {
        return new EditOutcome.Refused(
                "name",
                "Name of the mat was '%s'; another mat of the group has that name, please choose a different one."
                        .formatted(draft.name()));
    }
}
