package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.STAY_MOVE;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import warmshelf.web.AddressedSites;

/** Reads at which site a thing is: a shelf, a stay, what waits for a place and has one already, or the days of a mat. */
public final class AddressedSiteStore implements AddressedSites {
    private static final String UNDOING = "/stays/{id}/undo";

    /** By how addresses begin; of two that fit the first counts. */
    private static final Map<String, BiFunction<DSLContext, UUID, Select<Record1<UUID>>>> BY_ADDRESS =
            new LinkedHashMap<>();

    static {
        BY_ADDRESS.put("/sites/racks/{id}", AddressedSiteStore::ofRack);
        BY_ADDRESS.put("/sites/shelves/{id}", AddressedSiteStore::ofShelf);
        BY_ADDRESS.put("/sites/mats/{id}", AddressedSiteStore::ofMat);
        BY_ADDRESS.put("/mats/{id}", AddressedSiteStore::ofMat);
        BY_ADDRESS.put("/racks/{id}", AddressedSiteStore::ofRack);
        BY_ADDRESS.put(UNDOING, AddressedSiteStore::ofStayAndBefore);
        BY_ADDRESS.put("/stays/{id}", AddressedSiteStore::ofStay);
        BY_ADDRESS.put("/requests/{id}", AddressedSiteStore::ofRequest);
        BY_ADDRESS.put("/plans/out-of-service/{id}", AddressedSiteStore::ofOutage);
    }

    private final DSLContext sql;

    public AddressedSiteStore(DSLContext sql) {
        this.sql = sql;
    }

    @Override
    public boolean knows(String address) {
        return !address.contains("{")
                || address.startsWith("/sites/{id}")
                || BY_ADDRESS.keySet().stream().anyMatch(address::startsWith);
    }

    @Override
    public Set<UUID> of(String address, UUID id) {
        return BY_ADDRESS.entrySet().stream()
                .filter(each -> address.startsWith(each.getKey()))
                .findFirst()
                .map(each ->
                        Set.copyOf(sql.fetch(each.getValue().apply(sql, id)).getValues(RACK.SITE_ID)))
                .orElse(Set.of(id));
    }

    /** The site of a place; none where there is no such place. */
    public Set<UUID> ofPlace(UUID place) {
        return Set.copyOf(OnSiteStore.ofPlaces(sql.selectDistinct(RACK.SITE_ID).from(PLACE))
                .where(PLACE.ID.eq(place))
                .fetch(RACK.SITE_ID));
    }

    /** The same of a mat. */
    public Set<UUID> ofMat(UUID mat) {
        return Set.copyOf(ofMat(sql, mat).fetch(RACK.SITE_ID));
    }

    private static Select<Record1<UUID>> ofRack(DSLContext sql, UUID id) {
        return sql.select(RACK.SITE_ID).from(RACK).where(RACK.ID.eq(id));
    }

    private static Select<Record1<UUID>> ofShelf(DSLContext sql, UUID id) {
        return OnSiteStore.ofShelves(sql.select(RACK.SITE_ID).from(SHELF)).where(SHELF.ID.eq(id));
    }

    private static Select<Record1<UUID>> ofMat(DSLContext sql, UUID id) {
        return OnSiteStore.ofMats(sql.select(RACK.SITE_ID).from(MAT)).where(MAT.ID.eq(id));
    }

    private static Select<Record1<UUID>> ofStay(DSLContext sql, UUID id) {
        return OnSiteStore.ofPlaces(
                        sql.select(RACK.SITE_ID).from(STAY.join(PLACE).on(PLACE.ID.eq(STAY.PLACE_ID))))
                .where(STAY.ID.eq(id));
    }

    /** Undoing touches where it lies and where it lay before. */
    private static Select<Record1<UUID>> ofStayAndBefore(DSLContext sql, UUID id) {
        return ofStay(sql, id)
                .union(OnSiteStore.ofPlaces(sql.select(RACK.SITE_ID)
                                .from(STAY_MOVE.join(PLACE).on(PLACE.ID.eq(STAY_MOVE.OLD_PLACE_ID))))
                        .where(STAY_MOVE.NEW_STAY_ID.eq(id)));
    }

    /** Where it was laid; a request that waits has no place yet, and so no site. */
    private static Select<Record1<UUID>> ofRequest(DSLContext sql, UUID id) {
        return OnSiteStore.ofPlaces(
                        sql.selectDistinct(RACK.SITE_ID).from(STAY.join(PLACE).on(PLACE.ID.eq(STAY.PLACE_ID))))
                .where(STAY.SOWING_ID.eq(id), STAY.FROM_DAY.lt(STAY.TO_DAY));
    }

    private static Select<Record1<UUID>> ofOutage(DSLContext sql, UUID id) {
        return OnSiteStore.ofMats(
                        sql.select(RACK.SITE_ID).from(MAT.join(MAT_OUT).on(MAT_OUT.MAT_ID.eq(MAT.ID))))
                .where(MAT_OUT.ID.eq(id));
    }
}
