package warmshelf.tablet;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.shelf.OnSiteStore;
import warmshelf.words.Choice;

/** What lies or lay at a site, so that its tablet may tick it: a tick may come when the tray has left already. */
public final class TabletReachStore {
    private final DSLContext sql;

    public TabletReachStore(DSLContext sql) {
        this.sql = sql;
    }

    /** What a tablet of a site may tick on a day; a place that is booked from the next day on is on the round already. */
    public TickReach of(UUID site, LocalDate today) {
        return new TickReach() {
            @Override
            public boolean hasSowing(UUID sowing) {
                return sql.fetchExists(OnSiteStore.ofPlaces(
                                sql.selectOne().from(STAY.join(PLACE).on(PLACE.ID.eq(STAY.PLACE_ID))))
                        .where(
                                STAY.SOWING_ID.eq(sowing),
                                SITE.ID.eq(site),
                                STAY.FROM_DAY.lt(STAY.TO_DAY),
                                STAY.FROM_DAY.le(today.plusDays(1))));
            }

            @Override
            public boolean hasMat(UUID mat) {
                return sql.fetchExists(
                        OnSiteStore.ofMats(sql.selectOne().from(MAT)).where(MAT.ID.eq(mat), SITE.ID.eq(site)));
            }

            @Override
            public boolean mayHaveLooked(UUID member) {
                return sql.fetchExists(MEMBER, MEMBER.ID.eq(member), MEMBER.LEFT_AT.isNull());
            }
        };
    }

    /** Who could stand before it: everybody who belongs to the group, as others see their names. */
    public List<Choice> lookers() {
        return sql.select(MEMBER.ID, MEMBER.CALLED)
                .from(MEMBER)
                .where(MEMBER.LEFT_AT.isNull())
                .orderBy(MEMBER.CALLED, MEMBER.ID)
                .fetch(row -> new Choice(row.value1().toString(), row.value2()));
    }
}
