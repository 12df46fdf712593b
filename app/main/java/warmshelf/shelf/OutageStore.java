package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT_OUT;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Records;

/** Reads the days on which mats cannot be used. */
public final class OutageStore {
    private OutageStore() {}

    /** The mats that cannot be used on a day. */
    public static Set<UUID> out(DSLContext sql, LocalDate day) {
        return unusable(sql, day, day.plusDays(1)).stream().map(Outage::matId).collect(Collectors.toSet());
    }

    /** The days of outages, and of mats that are retired: on them nothing lies there. */
    public static List<Outage> unusable(DSLContext sql, LocalDate from, LocalDate to) {
        List<Outage> all = new ArrayList<>(touching(sql, from, to));
        RetirementStore.read(sql).mats().forEach((mat, since) -> {
            if (since.isBefore(to)) {
                all.add(new Outage(mat, mat, since, Outage.FOR_GOOD, ""));
            }
        });
        return all;
    }

    /** Those that reach into the days from one up to but not on another, the earliest first. */
    public static List<Outage> touching(DSLContext sql, LocalDate from, LocalDate to) {
        return sql.select(MAT_OUT.ID, MAT_OUT.MAT_ID, MAT_OUT.FROM_DAY, MAT_OUT.TO_DAY, MAT_OUT.REASON)
                .from(MAT_OUT)
                .where(MAT_OUT.FROM_DAY.lt(to), MAT_OUT.TO_DAY.gt(from), MAT_OUT.FROM_DAY.lt(MAT_OUT.TO_DAY))
                .orderBy(MAT_OUT.FROM_DAY, MAT_OUT.ID)
                .fetch(Records.mapping(Outage::new));
    }
}
