package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PLACE;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.generated.tables.records.MatDayRecord;
import warmshelf.words.Units;

/** Adds and changes the mats of a shelf, with their places. */
public final class MatStore {
    private static final PlaceStore PLACES = new PlaceStore("mat", PLACE.MAT_ID);

    private final DSLContext sql;
    private final Audit audit;

    public MatStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public EditOutcome add(UUID shelfId, MatDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return EditStore.make(sql, nameTaken(draft), transaction -> {
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
            PLACES.fit(transaction, id, draft.places());
            audit.write(transaction, by, "add", "mat", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    /**
     * Changes a mat; set-points already given from {@code today} on must stay within its thermostat's range.
     *
     * @param units in which a refusal names temperatures
     */
    public EditOutcome change(UUID id, int version, MatDraft draft, UUID by, LocalDate today, Units units) {
        return EditStore.make(sql, nameTaken(draft), transaction -> {
            if (PLACES.usedBeyond(transaction, id, draft.places())) {
                return PlaceStore.used("places", "Places", draft.places());
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
            PLACES.fit(transaction, id, draft.places());
            audit.write(transaction, by, "change", "mat", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
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

    private static EditOutcome.Refused setPointInTheWay(MatDayRecord day, MatDraft draft, Units units) {
        return new EditOutcome.Refused(
                "low",
                "The thermostat range was %s, but this mat is set to %s on %s; move what lies there first."
                        .formatted(
                                units.temperatureRange(draft.lowC(), draft.highC()),
                                units.temperature(day.getCelsius()),
                                day.getOnDay()));
    }

    private static EditOutcome.Refused nameTaken(MatDraft draft) {
        return new EditOutcome.Refused(
                "name",
                "Name of the mat was '%s'; another mat of the group has that name, please choose a different one."
                        .formatted(draft.name()));
    }
}
