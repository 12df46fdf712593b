package warmshelf.check;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SITE;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Record3;
import org.jooq.Records;
import warmshelf.db.Database;
import warmshelf.shelf.OutageStore;

/** Reads what the round of a day needs beside the sowings: mats to read, and who is on duty. */
public final class TodayStore {
    private final DSLContext sql;

    public TodayStore(Database database) {
        this.sql = database.sql();
    }

    /** A mat on which something lies on a day, with its set-point and the last reading of that day. */
    record MatToRead(UUID matId, String name, double setPointC, Double readC, String readBy) {}

    /** The mats on which something lies on a day; one out of service is not warmed, so that nobody is to read it. */
    Map<UUID, MatToRead> mats(LocalDate day) {
        // In the order of reading, so that of several the last one stands.
        Map<UUID, Record3<UUID, BigDecimal, String>> readings = new HashMap<>();
        // From the mats on, because all entries are of a day, but few of a mat and a day.
        sql.select(ENTRY.MAT_ID, ENTRY.CELSIUS, MEMBER.CALLED)
                .from(MAT)
                .join(ENTRY)
                .on(ENTRY.MAT_ID.eq(MAT.ID), ENTRY.SEEN_ON.eq(day))
                .join(MEMBER)
                .on(MEMBER.ID.eq(ENTRY.MADE_BY))
                .orderBy(ENTRY.SEEN_AT, ENTRY.KEPT_ORDER)
                .forEach(reading -> readings.put(reading.value1(), reading));
        Set<UUID> out = OutageStore.out(sql, day);
        return sql
                .selectDistinct(MAT.ID, MAT.NAME, MAT_DAY.CELSIUS)
                .from(MAT)
                .join(MAT_DAY)
                .on(MAT_DAY.MAT_ID.eq(MAT.ID), MAT_DAY.ON_DAY.eq(day))
                .join(QUARTER_DAY)
                .on(QUARTER_DAY.MAT_ID.eq(MAT.ID), QUARTER_DAY.ON_DAY.eq(day))
                .fetch()
                .stream()
                .filter(row -> !out.contains(row.value1()))
                .map(row -> {
                    var reading = readings.get(row.value1());
                    return reading == null
                            ? new MatToRead(row.value1(), row.value2(), row.value3(), Double.NaN, "")
                            : new MatToRead(
                                    row.value1(),
                                    row.value2(),
                                    row.value3(),
                                    reading.value2().doubleValue(),
                                    reading.value3());
                })
                .collect(Collectors.toMap(MatToRead::matId, mat -> mat));
    }

    /** Who looks where on a day. */
    public record OnDuty(UUID siteId, String site, UUID memberId, String member) {}

    /** Who is on duty on a day, in walking order of the sites. */
    public List<OnDuty> onDuty(LocalDate day) {
        return sql.select(SITE.ID, SITE.NAME, MEMBER.ID, MEMBER.CALLED)
                .from(DUTY)
                .join(SITE)
                .on(SITE.ID.eq(DUTY.SITE_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(DUTY.MEMBER_ID))
                .where(DUTY.ON_DAY.eq(day))
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(Records.mapping(OnDuty::new));
    }
}
