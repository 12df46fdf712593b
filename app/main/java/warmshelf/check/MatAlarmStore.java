package warmshelf.check;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.Record;
import warmshelf.db.Database;
import warmshelf.db.KeptUntilWritten;
import warmshelf.shelf.OnSiteStore;
import warmshelf.shelf.OutageStore;

/** Reads which mats were too hot or too cold when they were last read. Everyone's Today asks, so it is kept until a write. */
public final class MatAlarmStore {
    private final Database database;
    private final KeptUntilWritten<LocalDate, List<MatAlarm>> kept;

    public MatAlarmStore(Database database) {
        this.database = database;
        this.kept = new KeptUntilWritten<>(database, this::read);
    }

    /** Mats whose last reading of today or yesterday was too far off, in walking order. */
    public List<MatAlarm> on(LocalDate day) {
        return kept.get(day);
    }

    private List<MatAlarm> read(LocalDate day) {
        List<MatAlarm> alarms = new ArrayList<>();
        // What is out of service is not warmed: it counts as seen.
        Set<UUID> seen = new HashSet<>(OutageStore.out(database.sql(), day));
        OnSiteStore.ofMats(database.sql()
                        .select(
                                ENTRY.ID,
                                MAT.ID,
                                SITE.ID,
                                MAT.NAME,
                                SITE.NAME,
                                RACK.NAME,
                                SHELF.FROM_TOP,
                                ENTRY.CELSIUS,
                                MAT_DAY.CELSIUS,
                                ENTRY.SEEN_ON,
                                MEMBER.CALLED)
                        .from(ENTRY)
                        .join(MAT)
                        .on(MAT.ID.eq(ENTRY.MAT_ID)))
                .join(MEMBER)
                .on(MEMBER.ID.eq(ENTRY.MADE_BY))
                .leftJoin(MAT_DAY)
                .on(MAT_DAY.MAT_ID.eq(MAT.ID), MAT_DAY.ON_DAY.eq(ENTRY.SEEN_ON))
                .where(ENTRY.SEEN_ON.between(day.minusDays(1), day), ENTRY.CELSIUS.isNotNull())
                .orderBy(
                        SITE.WALK_ORDER,
                        SITE.NAME,
                        RACK.WALK_ORDER,
                        RACK.NAME,
                        SHELF.FROM_TOP,
                        MAT.WALK_ORDER,
                        MAT.NAME,
                        ENTRY.SEEN_AT.desc(),
                        ENTRY.KEPT_ORDER.desc())
                .forEach(row -> {
                    // Only the last reading of a mat counts: a good one ends the alarm.
                    if (seen.add(row.get(MAT.ID)) && isOff(row)) {
                        alarms.add(alarm(row, day));
                    }
                });
        return alarms;
    }

    private static boolean isOff(Record row) {
        Double setPoint = row.get(MAT_DAY.CELSIUS);
        return setPoint != null && MatAlarm.isOff(row.get(ENTRY.CELSIUS).doubleValue(), setPoint);
    }

    private MatAlarm alarm(Record row, LocalDate day) {
        return new MatAlarm(
                row.get(ENTRY.ID),
                row.get(MAT.ID),
                row.get(SITE.ID),
                row.get(MAT.NAME),
                "%s · %s · shelf %d".formatted(row.get(SITE.NAME), row.get(RACK.NAME), row.get(SHELF.FROM_TOP)),
                row.get(ENTRY.CELSIUS).doubleValue(),
                row.get(MAT_DAY.CELSIUS),
                row.get(ENTRY.SEEN_ON),
                row.get(MEMBER.CALLED),
                concerned(row.get(MAT.ID), day));
    }

    private Set<UUID> concerned(UUID mat, LocalDate day) {
        return new HashSet<>(database.sql()
                .selectDistinct(SOWING.MEMBER_ID)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .where(PLACE.MAT_ID.eq(mat), STAY.FROM_DAY.le(day), STAY.TO_DAY.gt(day))
                .fetch(SOWING.MEMBER_ID));
    }
}
