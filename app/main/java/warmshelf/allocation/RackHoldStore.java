package warmshelf.allocation;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARANTINE_SHELF;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.RACK_HOLD;
import static warmshelf.db.generated.Tables.SHELF;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.Entry;
import warmshelf.shelf.OnSiteStore;

/** Keeps which racks are held, since when and by which entry, and who cleared them. */
public final class RackHoldStore {
    private final DSLContext sql;
    private final Audit audit;

    public RackHoldStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A hold that is not cleared, of an entry that nobody has corrected since. */
    public static Condition stands() {
        Entry later = ENTRY.as("later");
        return RACK_HOLD
                .CLEARED_AT
                .isNull()
                .and(DSL.notExists(DSL.selectOne().from(later).where(later.SUPERSEDES.eq(RACK_HOLD.ENTRY_ID))));
    }

    /** All holds as they stand, with where each place is. */
    public static RackHolds read(DSLContext sql) {
        Map<UUID, RackHold> held = new HashMap<>();
        sql.select(RACK.ID, RACK.NAME, ENTRY.SEEN_ON)
                .from(RACK_HOLD)
                .join(RACK)
                .on(RACK.ID.eq(RACK_HOLD.RACK_ID))
                .join(ENTRY)
                .on(ENTRY.ID.eq(RACK_HOLD.ENTRY_ID))
                .where(stands())
                .orderBy(ENTRY.SEEN_ON)
                .forEach(row -> held.putIfAbsent(
                        row.get(RACK.ID), new RackHold(row.get(RACK.ID), row.get(RACK.NAME), row.get(ENTRY.SEEN_ON))));
        if (held.isEmpty()) {
            return RackHolds.NONE;
        }
        Map<UUID, UUID> shelfOf = OnSiteStore.shelvesOfPlaces(
                        sql.select(PLACE.ID, SHELF.ID).from(PLACE))
                .fetchMap(PLACE.ID, SHELF.ID);
        Map<UUID, UUID> racks = sql.select(SHELF.ID, SHELF.RACK_ID).from(SHELF).fetchMap(SHELF.ID, SHELF.RACK_ID);
        Set<UUID> apart = Set.copyOf(
                sql.select(QUARANTINE_SHELF.SHELF_ID).from(QUARANTINE_SHELF).fetch(QUARANTINE_SHELF.SHELF_ID));
        Map<UUID, UUID> rackOf = new HashMap<>();
        shelfOf.forEach((place, shelf) -> rackOf.put(place, racks.get(shelf)));
        return new RackHolds(
                held,
                rackOf,
                shelfOf.entrySet().stream()
                        .filter(each -> apart.contains(each.getValue()))
                        .map(Map.Entry::getKey)
                        .collect(Collectors.toSet()));
    }

    /**
     * Holds the racks on which some places are, because of an entry. Whatever an entry held that this one corrects is held on.
     *
     * @param supersedes the entry that it corrects, or null
     */
    public static void hold(DSLContext tx, UUID entry, @Nullable UUID supersedes, Collection<UUID> places) {
        List<UUID> racks = supersedes == null
                ? List.of()
                : tx.select(RACK_HOLD.RACK_ID)
                        .from(RACK_HOLD)
                        .where(RACK_HOLD.ENTRY_ID.eq(supersedes), RACK_HOLD.CLEARED_AT.isNull())
                        .fetch(RACK_HOLD.RACK_ID);
        if (racks.isEmpty()) {
            racks = racksOf(tx, places);
        }
        racks.forEach(rack -> tx.insertInto(RACK_HOLD)
                .set(RACK_HOLD.ENTRY_ID, entry)
                .set(RACK_HOLD.RACK_ID, rack)
                .execute());
    }

    private static List<UUID> racksOf(DSLContext tx, Collection<UUID> places) {
        return places.isEmpty()
                ? List.of()
                : OnSiteStore.shelvesOfPlaces(tx.selectDistinct(SHELF.RACK_ID).from(PLACE))
                        .where(PLACE.ID.in(places))
                        .fetch(SHELF.RACK_ID);
    }

    /** Clears a rack of all that holds it; false when nothing did. */
    public boolean clear(UUID rack, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int cleared = tx.update(RACK_HOLD)
                    .set(RACK_HOLD.CLEARED_BY, by)
                    .set(RACK_HOLD.CLEARED_AT, audit.now())
                    .where(RACK_HOLD.RACK_ID.eq(rack), RACK_HOLD.CLEARED_AT.isNull())
                    .execute();
            if (cleared > 0) {
                audit.write(tx, by, "clear rack", "rack", rack, "%d notes".formatted(cleared));
            }
            return cleared > 0;
        });
    }
}
