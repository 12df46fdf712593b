package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.db.Database;
import warmshelf.shelf.Lamp;
import warmshelf.shelf.OnSiteStore;

/** Reads every place in walking order: site, rack, shelf from the top, mats before the light, place. */
public final class WalkStore {
    private final DSLContext sql;

    public WalkStore(Database database) {
        this.sql = database.sql();
    }

    Map<UUID, PlaceAddress> addresses() {
        Map<UUID, PlaceAddress> inOrder = new LinkedHashMap<>();
        OnSiteStore.ofPlaces(sql.select(
                                PLACE.ID,
                                PLACE.MAT_ID,
                                PLACE.NUMBER,
                                MAT.NAME,
                                SHELF.FROM_TOP,
                                SHELF.LAMP,
                                SHELF.LAMP_HOURS,
                                SHELF.LAMP_TIMER,
                                RACK.NAME,
                                SITE.ID,
                                SITE.NAME)
                        .from(PLACE))
                .orderBy(
                        SITE.WALK_ORDER,
                        SITE.NAME,
                        RACK.WALK_ORDER,
                        RACK.NAME,
                        SHELF.FROM_TOP,
                        PLACE.KIND.desc(),
                        MAT.WALK_ORDER,
                        MAT.NAME,
                        PLACE.NUMBER)
                .forEach(row -> inOrder.put(row.get(PLACE.ID), address(row, inOrder.size())));
        return inOrder;
    }

    private static PlaceAddress address(Record row, int walkOrder) {
        String surface = row.get(MAT.NAME) == null ? SAY.underTheLight() : SAY.onMat(row.get(MAT.NAME));
        return new PlaceAddress(
                row.get(PLACE.ID),
                row.get(SITE.ID),
                row.get(SITE.NAME),
                row.get(RACK.NAME),
                row.get(SHELF.FROM_TOP),
                row.get(PLACE.MAT_ID),
                surface,
                row.get(PLACE.NUMBER),
                new Lamp(Lamp.Kind.named(row.get(SHELF.LAMP)), row.get(SHELF.LAMP_HOURS), row.get(SHELF.LAMP_TIMER)),
                walkOrder);
    }
}
