package warmshelf.plan;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.shelf.OnSiteStore;

/** Keeps the days on which mats cannot be used. */
final class OutageDecisionStore {
    private final DSLContext sql;
    private final Audit audit;

    OutageDecisionStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /**
     * Days on which a mat is out of service.
     *
     * @param to the day after the last
     */
    public record Out(
            UUID id, UUID matId, String mat, LocalDate from, LocalDate to, String reason, String by, UUID site) {
        public LocalDate lastDay() {
            return to.minusDays(1);
        }
    }

    /** What is not over on a day, the earliest first. */
    List<Out> reachingBeyond(LocalDate day) {
        return outs(MAT_OUT.TO_DAY.gt(day));
    }

    /** The outage of that id, unless it was taken back before it began. */
    Optional<Out> find(UUID id) {
        return outs(MAT_OUT.ID.eq(id)).stream().findFirst();
    }

    private List<Out> outs(Condition which) {
        return OnSiteStore.ofMats(sql.select(
                                MAT_OUT.ID,
                                MAT_OUT.MAT_ID,
                                MAT.NAME,
                                MAT_OUT.FROM_DAY,
                                MAT_OUT.TO_DAY,
                                MAT_OUT.REASON,
                                MEMBER.CALLED,
                                RACK.SITE_ID)
                        .from(MAT_OUT)
                        .join(MAT)
                        .on(MAT.ID.eq(MAT_OUT.MAT_ID)))
                .join(MEMBER)
                .on(MEMBER.ID.eq(MAT_OUT.MADE_BY))
                .where(which, MAT_OUT.FROM_DAY.lt(MAT_OUT.TO_DAY))
                .orderBy(MAT_OUT.FROM_DAY, MAT.NAME)
                .fetch(Records.mapping(Out::new));
    }

    /**
     * Takes a mat out of service. What lies there stays until somebody moves it: a broken mat does not ask.
     *
     * @return the id of the outage
     */
    UUID takeOut(UUID mat, LocalDate from, LocalDate to, String reason, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            // Whoever lays something there holds the mat too, so nobody slips in between.
            tx.select(MAT.ID).from(MAT).where(MAT.ID.eq(mat)).forUpdate().fetch();
            UUID id = UUID.randomUUID();
            tx.insertInto(MAT_OUT)
                    .set(MAT_OUT.ID, id)
                    .set(MAT_OUT.MAT_ID, mat)
                    .set(MAT_OUT.FROM_DAY, from)
                    .set(MAT_OUT.TO_DAY, to)
                    .set(MAT_OUT.REASON, reason)
                    .set(MAT_OUT.MADE_BY, by)
                    .set(MAT_OUT.MADE_AT, audit.now())
                    .execute();
            audit.write(tx, by, "take mat out", "mat", mat, "%s to before %s: %s".formatted(from, to, reason));
            return id;
        });
    }

    /** The stays on its mat on days of an outage, from a day on, in the order in which they begin and lie. */
    List<UUID> staysOn(Out out, LocalDate day) {
        return sql.select(STAY.ID)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .where(
                        PLACE.MAT_ID.eq(out.matId()),
                        STAY.FROM_DAY.lt(out.to()),
                        STAY.TO_DAY.gt(out.from().isBefore(day) ? day : out.from()),
                        STAY.FROM_DAY.lt(STAY.TO_DAY))
                .orderBy(STAY.FROM_DAY, PLACE.NUMBER, STAY.FIRST_QUARTER, STAY.ID)
                .fetch(STAY.ID);
    }

    /** The site at which each mat lies. */
    Map<UUID, UUID> sitesOfMats() {
        return sql.select(MAT.ID, RACK.SITE_ID)
                .from(MAT)
                .join(SHELF)
                .on(SHELF.ID.eq(MAT.SHELF_ID))
                .join(RACK)
                .on(RACK.ID.eq(SHELF.RACK_ID))
                .fetchMap(MAT.ID, RACK.SITE_ID);
    }

    /** The mat is back from a day on; the id of the outage, or nothing where there is none to end. */
    Decision<UUID> end(UUID id, LocalDate day, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int ended = tx.update(MAT_OUT)
                    .set(
                            MAT_OUT.TO_DAY,
                            DSL.when(MAT_OUT.FROM_DAY.gt(day), MAT_OUT.FROM_DAY).otherwise(day))
                    .set(MAT_OUT.ENDED_BY, by)
                    .set(MAT_OUT.ENDED_AT, audit.now())
                    .where(MAT_OUT.ID.eq(id), MAT_OUT.TO_DAY.gt(day), MAT_OUT.ENDED_AT.isNull())
                    .execute();
            if (ended == 0) {
                return new Decision.Missing<>();
            }
            audit.write(tx, by, "bring mat back", "mat-out", id, "from " + day);
            return new Decision.Done<>(id);
        });
    }
}
