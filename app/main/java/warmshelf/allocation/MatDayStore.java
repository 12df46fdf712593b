package warmshelf.allocation;

import static warmshelf.db.generated.Tables.MAT;

import java.time.LocalDate;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.decision.Declined;

/** Sets mats from day to day, within the caller's transaction; what lies there must bear it, and the database judges. */
public final class MatDayStore {
    private final Audit audit;
    private final ClashStore clashes;

    public MatDayStore(Audit audit, ClashStore clashes) {
        this.audit = audit;
        this.clashes = clashes;
    }

    /**
     * Changes a mat's set-point on days; what lies there must bear it. Where nothing lies, it binds nobody.
     *
     * @param afterLast the day after the last day
     * @throws Declined when the thermostat cannot hold it or something on the mat cannot bear it
     */
    public void setPoint(DSLContext tx, UUID mat, LocalDate first, LocalDate afterLast, double celsius, UUID by) {
        turn(tx, mat, first, afterLast, celsius, false, by);
    }

    /**
     * Turns a mat by hand: the same, and what is laid there later follows it.
     *
     * @param afterLast the day after the last day
     * @throws Declined when the thermostat cannot hold it or something on the mat cannot bear it
     */
    public void turnByHand(DSLContext tx, UUID mat, LocalDate first, LocalDate afterLast, double celsius, UUID by) {
        turn(tx, mat, first, afterLast, celsius, true, by);
    }

    private void turn(
            DSLContext tx, UUID mat, LocalDate first, LocalDate afterLast, double celsius, boolean byHand, UUID by) {
        lock(tx, mat);
        clashes.cannotBear(tx, mat, first, afterLast, celsius).ifPresent(reason -> {
            throw Declined.overtaken(reason);
        });
        QuarterDayStore.judged(() -> {
            first.datesUntil(afterLast).forEach(day -> QuarterDayStore.putSetPoint(tx, mat, day, celsius, byHand));
            return mat;
        });
        audit.write(
                tx,
                by,
                "set mat temperature",
                "mat",
                mat,
                "%s C from %s to before %s".formatted(WarmDays.written(celsius), first, afterLast));
    }

    /** Two people who place on one mat at once take turns, so that the second gets the true sentence. */
    public static void lock(DSLContext tx, UUID mat) {
        tx.select(MAT.ID).from(MAT).where(MAT.ID.eq(mat)).forUpdate().fetch();
    }
}
