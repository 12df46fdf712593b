package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;

import org.jooq.Record;
import org.jooq.SelectJoinStep;
import org.jooq.SelectOnConditionStep;
import org.jooq.impl.DSL;

/** Lets a question about mats or places know their shelf, rack and site as well. */
public final class OnSiteStore {
    private OnSiteStore() {}

    /** Adds shelf, rack and site to a question about mats. */
    public static <R extends Record> SelectOnConditionStep<R> ofMats(SelectJoinStep<R> mats) {
        return ofShelves(mats.join(SHELF).on(SHELF.ID.eq(MAT.SHELF_ID)));
    }

    /** Adds the mat, where there is one, shelf, rack and site to a question about places of either kind. */
    public static <R extends Record> SelectOnConditionStep<R> ofPlaces(SelectJoinStep<R> places) {
        return ofShelves(shelvesOfPlaces(places));
    }

    /** Adds the mat, where there is one, and the shelf to a question about places of either kind. */
    public static <R extends Record> SelectOnConditionStep<R> shelvesOfPlaces(SelectJoinStep<R> places) {
        return places.leftJoin(MAT)
                .on(MAT.ID.eq(PLACE.MAT_ID))
                .join(SHELF)
                .on(SHELF.ID.eq(DSL.coalesce(PLACE.LIT_SHELF_ID, MAT.SHELF_ID)));
    }

    /** Adds shelf, rack and site to a question about places under a light. */
    public static <R extends Record> SelectOnConditionStep<R> ofLitPlaces(SelectJoinStep<R> places) {
        return ofShelves(places.join(SHELF).on(SHELF.ID.eq(PLACE.LIT_SHELF_ID)));
    }

    /** Adds rack and site to a question about shelves. */
    public static <R extends Record> SelectOnConditionStep<R> ofShelves(SelectJoinStep<R> shelves) {
        return shelves.join(RACK).on(RACK.ID.eq(SHELF.RACK_ID)).join(SITE).on(SITE.ID.eq(RACK.SITE_ID));
    }
}
