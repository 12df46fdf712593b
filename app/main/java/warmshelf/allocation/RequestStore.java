package warmshelf.allocation;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;

/** Keeps requests for warm space and what was decided on them. */
public final class RequestStore {
    private final DSLContext sql;
    private final Audit audit;
    private final NewsBookStore news;

    public RequestStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
        this.news = new NewsBookStore(audit);
    }

    public Optional<SpaceRequest> find(UUID sowing) {
        return find(sql, sowing);
    }

    /** The request of a sowing, read within a transaction. */
    public Optional<SpaceRequest> find(DSLContext tx, UUID sowing) {
        return requests(tx, SPACE_REQUEST, SPACE_REQUEST.SOWING_ID.eq(sowing)).stream()
                .findFirst();
    }

    /**
     * Who decided last on a request.
     *
     * @param by what others call them
     */
    public record Decided(String by, OffsetDateTime at) {
        /** The day, in a zone. */
        public LocalDate on(ZoneId zone) {
            return at.atZoneSameInstant(zone).toLocalDate();
        }
    }

    /** Who decided last on the request of a sowing; empty where nobody did, or the program did by itself. */
    public Optional<Decided> decided(UUID sowing) {
        return sql.select(MEMBER.CALLED, SPACE_REQUEST.DECIDED_AT)
                .from(SPACE_REQUEST)
                .join(MEMBER)
                .on(MEMBER.ID.eq(SPACE_REQUEST.DECIDED_BY))
                .where(SPACE_REQUEST.SOWING_ID.eq(sowing))
                .fetchOptional(row -> new Decided(row.value1(), row.value2()));
    }

    /** The requests that wait for a decision, the earliest ideal day first. */
    public List<SpaceRequest> waiting() {
        return requests(sql, SPACE_REQUEST, SPACE_REQUEST.STATE.eq(SpaceRequest.State.WAITING.word()));
    }

    /** How many wait for a decision. */
    public int countWaiting() {
        return sql.fetchCount(SPACE_REQUEST, SPACE_REQUEST.STATE.eq(SpaceRequest.State.WAITING.word()));
    }

    /** The requests of some sowings. */
    public List<SpaceRequest> ofSowings(java.util.Collection<UUID> sowings) {
        return requests(sql, Database.listed(SPACE_REQUEST, SPACE_REQUEST.SOWING_ID, sowings), DSL.noCondition());
    }

    /** Adds a waiting request within the caller's transaction. */
    public void add(DSLContext tx, SpaceRequest request) {
        tx.insertInto(SPACE_REQUEST)
                .set(SPACE_REQUEST.SOWING_ID, request.sowingId())
                .set(SPACE_REQUEST.STATE, request.state().word())
                .set(SPACE_REQUEST.EARLIEST, request.earliest())
                .set(SPACE_REQUEST.IDEAL, request.ideal())
                .set(SPACE_REQUEST.LATEST, request.latest())
                .set(SPACE_REQUEST.DAYS, request.days())
                .set(SPACE_REQUEST.QUARTERS, request.quarters())
                .set(SPACE_REQUEST.LOW_C, request.band().lowC())
                .set(SPACE_REQUEST.HIGH_C, request.band().highC())
                .set(SPACE_REQUEST.UNDER_LIGHT, request.underLight())
                .set(SPACE_REQUEST.NEEDS_LIGHT, request.needsLight())
                .set(SPACE_REQUEST.REASON, request.reason())
                .set(SPACE_REQUEST.VERSION, request.version())
                .execute();
    }

    /**
     * Decides on a request if nobody else did since it was read.
     *
     * @return what was decided
     */
    public Decision<SpaceRequest.State> decide(
            DSLContext tx, SpaceRequest request, SpaceRequest.State state, String reason, @Nullable UUID by) {
        int changed = tx.update(SPACE_REQUEST)
                .set(SPACE_REQUEST.STATE, state.word())
                .set(SPACE_REQUEST.REASON, reason)
                .set(SPACE_REQUEST.DECIDED_BY, by)
                .set(SPACE_REQUEST.DECIDED_AT, audit.now())
                .set(SPACE_REQUEST.VERSION, SPACE_REQUEST.VERSION.plus(1))
                .where(SPACE_REQUEST.SOWING_ID.eq(request.sowingId()), SPACE_REQUEST.VERSION.eq(request.version()))
                .execute();
        if (changed == 0) {
            return new Decision.Overtaken<>(new SpaceRefusal.DecidedMeanwhile());
        }
        audit.write(tx, by, "request " + state.word(), "sowing", request.sowingId(), reason);
        tell(tx, request.sowingId(), state, by);
        return new Decision.Done<>(state);
    }

    private void tell(DSLContext tx, UUID sowing, SpaceRequest.State state, @Nullable UUID by) {
        switch (state) {
            case PLACED -> news.tellDecision(tx, NewsEvent.ofSowing(NewsKind.PLACED, sowing, by));
            case REFUSED -> news.tellDecision(tx, NewsEvent.ofSowing(NewsKind.REFUSED, sowing, by));
            case WAITING -> news.tellDecision(tx, NewsEvent.ofSowing(NewsKind.WAITING, sowing, by));
            case WITHDRAWN -> {}
        }
    }

    /** Keeps that the seed of a request gets its light otherwise than from the mat's place, or that it does not. */
    public void lightOtherwise(DSLContext tx, UUID sowing, boolean otherwise, UUID by) {
        int changed = tx.update(SPACE_REQUEST)
                .set(SPACE_REQUEST.NEEDS_LIGHT, !otherwise)
                .where(SPACE_REQUEST.SOWING_ID.eq(sowing), SPACE_REQUEST.NEEDS_LIGHT.eq(otherwise))
                .execute();
        if (changed > 0) {
            audit.write(tx, by, otherwise ? "gets light otherwise" : "needs a lit place", "sowing", sowing, "");
        }
    }

    /** Whether a sowing's seed is not to lie on a mat without light. */
    static boolean needsLight(DSLContext tx, UUID sowing) {
        return tx.fetchExists(SPACE_REQUEST, SPACE_REQUEST.SOWING_ID.eq(sowing), SPACE_REQUEST.NEEDS_LIGHT.isTrue());
    }

    private static List<SpaceRequest> requests(DSLContext from, Table<?> among, Condition which) {
        return from.select(SPACE_REQUEST.asterisk())
                .from(among)
                .where(which)
                .orderBy(SPACE_REQUEST.IDEAL, SPACE_REQUEST.SOWING_ID)
                .fetch(RequestStore::request);
    }

    private static SpaceRequest request(Record found) {
        return new SpaceRequest(
                found.get(SPACE_REQUEST.SOWING_ID),
                SpaceRequest.State.named(found.get(SPACE_REQUEST.STATE)),
                found.get(SPACE_REQUEST.EARLIEST),
                found.get(SPACE_REQUEST.IDEAL),
                found.get(SPACE_REQUEST.LATEST),
                found.get(SPACE_REQUEST.DAYS),
                found.get(SPACE_REQUEST.QUARTERS),
                new Band(found.get(SPACE_REQUEST.LOW_C), found.get(SPACE_REQUEST.HIGH_C)),
                found.get(SPACE_REQUEST.UNDER_LIGHT),
                found.get(SPACE_REQUEST.NEEDS_LIGHT),
                found.get(SPACE_REQUEST.REASON),
                found.get(SPACE_REQUEST.VERSION));
    }
}
