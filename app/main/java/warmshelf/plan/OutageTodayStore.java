package warmshelf.plan;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import warmshelf.db.Database;
import warmshelf.db.KeptUntilWritten;
import warmshelf.shelf.OnSiteStore;
import warmshelf.shelf.Outage;
import warmshelf.shelf.OutageStore;

/** Reads which mats cannot be used and what lies on them. Everyone's Today asks, so it is kept until a write. */
final class OutageTodayStore {
    /** Outages that begin by then are told, so that what lies there can be moved in time. */
    private static final int DAYS_AHEAD = 7;

    private final Database database;
    private final KeptUntilWritten<LocalDate, List<MatOut>> kept;

    OutageTodayStore(Database database) {
        this.database = database;
        this.kept = new KeptUntilWritten<>(database, this::read);
    }

    /**
     * A mat that cannot be used.
     *
     * @param site where it is
     * @param stays how many lie there on those days
     * @param concerned whose they are
     */
    public record MatOut(Outage outage, String mat, UUID site, int stays, Set<UUID> concerned) {}

    /** Every mat that is out of service on a day or in the week after it, the earliest first. */
    List<MatOut> on(LocalDate day) {
        return kept.get(day);
    }

    private List<MatOut> read(LocalDate day) {
        return OutageStore.touching(database.sql(), day, day.plusDays(DAYS_AHEAD)).stream()
                .map(outage -> read(outage, day))
                .toList();
    }

    private MatOut read(Outage outage, LocalDate day) {
        Set<UUID> concerned = new HashSet<>();
        int stays = 0;
        for (var stay : database.sql()
                .select(STAY.ID, SOWING.MEMBER_ID)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .where(
                        PLACE.MAT_ID.eq(outage.matId()),
                        STAY.FROM_DAY.lt(outage.to()),
                        STAY.TO_DAY.gt(outage.from().isBefore(day) ? day : outage.from()),
                        STAY.FROM_DAY.lt(STAY.TO_DAY))
                .fetch()) {
            stays++;
            concerned.add(stay.value2());
        }
        var mat = OnSiteStore.ofMats(
                        database.sql().select(MAT.NAME, RACK.SITE_ID).from(MAT))
                .where(MAT.ID.eq(outage.matId()))
                .fetchSingle();
        return new MatOut(outage, mat.value1(), mat.value2(), stays, concerned);
    }
}
