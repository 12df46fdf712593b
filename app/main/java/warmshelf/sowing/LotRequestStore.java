package warmshelf.sowing;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;

import java.util.Collection;
import java.util.List;
import java.util.Map;
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
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;

/** Keeps what members ask of each other's seed, and the answers. */
public final class LotRequestStore {

    private final DSLContext sql;
    private final Audit audit;
    private final NewsBookStore news;

    public LotRequestStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
        this.news = new NewsBookStore(audit);
    }

    /** A request with whose sowing and whose lot it concerns; the owner is null for the group's own seed. */
    record Concerning(
            LotRequest request, UUID growerId, @Nullable UUID ownerId, boolean ownerHasLeft) {}

    public Optional<LotRequest> find(UUID sowing) {
        return find(sql, sowing);
    }

    /** The request of a sowing, read within a transaction. */
    public Optional<LotRequest> find(DSLContext tx, UUID sowing) {
        return rows(tx, LOT_REQUEST, LOT_REQUEST.SOWING_ID.eq(sowing)).stream()
                .map(Concerning::request)
                .findFirst();
    }

    /** The requests of some sowings, by sowing. */
    public Map<UUID, LotRequest> ofSowings(Collection<UUID> sowings) {
        return rows(sql, Database.listed(LOT_REQUEST, LOT_REQUEST.SOWING_ID, sowings), DSL.noCondition()).stream()
                .map(Concerning::request)
                .collect(java.util.stream.Collectors.toMap(LotRequest::sowingId, request -> request));
    }

    /** What waits for an answer, or left a sowing without seed; nothing of what is sown or has ended. The oldest first. */
    List<Concerning> open() {
        return rows(
                sql,
                LOT_REQUEST,
                SOWING.STAGE.in(SowingStage.BEFORE_SOWING).and(LOT_REQUEST.STATE.ne(LotRequest.State.GIVEN.word())));
    }

    /** Asks the lot's owner for the seed of a sowing, in place of what was asked for it before. */
    void ask(DSLContext tx, UUID sowing, UUID lot, int seeds, UUID by) {
        write(tx, sowing, lot, LotRequest.State.WAITING, seeds, by);
        audit.write(tx, by, "ask for seed", "sowing", sowing, "%d seeds of lot %s".formatted(seeds, lot));
        tx.select(LOT.OWNER_ID)
                .from(LOT)
                .where(LOT.ID.eq(lot), LOT.OWNER_ID.isNotNull())
                .fetchOptional(LOT.OWNER_ID)
                .ifPresent(owner -> news.tell(tx, owner, NewsEvent.ofSowing(NewsKind.SEED_ASKED, sowing, by)));
    }

    /** Notes that the seed of a sowing has gone to others. */
    void noteGone(DSLContext tx, UUID sowing, UUID lot, int seeds, UUID by) {
        write(tx, sowing, lot, LotRequest.State.GONE, seeds, by);
        audit.write(tx, by, "seed gone", "sowing", sowing, "%d seeds of lot %s".formatted(seeds, lot));
    }

    /** Ends what was asked for a sowing that has its seed elsewhere now. */
    void clear(DSLContext tx, UUID sowing) {
        tx.deleteFrom(LOT_REQUEST).where(LOT_REQUEST.SOWING_ID.eq(sowing)).execute();
    }

    /** Writes the owner's answer to a waiting request; no seeds mean no. */
    void answer(DSLContext tx, UUID sowing, int seeds, String reason, UUID by) {
        boolean given = seeds > 0;
        tx.update(LOT_REQUEST)
                .set(LOT_REQUEST.STATE, (given ? LotRequest.State.GIVEN : LotRequest.State.REFUSED).word())
                .set(LOT_REQUEST.GIVEN, given ? seeds : null)
                .set(LOT_REQUEST.REASON, reason)
                .set(LOT_REQUEST.ANSWERED_BY, by)
                .set(LOT_REQUEST.ANSWERED_AT, audit.now())
                .where(LOT_REQUEST.SOWING_ID.eq(sowing))
                .execute();
        audit.write(tx, by, given ? "give seed" : "refuse seed", "sowing", sowing, seeds + " seeds");
        news.tellGrower(tx, NewsEvent.ofSowing(given ? NewsKind.SEED_GIVEN : NewsKind.SEED_REFUSED, sowing, by));
    }

    private void write(DSLContext tx, UUID sowing, UUID lot, LotRequest.State state, int seeds, UUID by) {
        clear(tx, sowing);
        tx.insertInto(LOT_REQUEST)
                .set(LOT_REQUEST.SOWING_ID, sowing)
                .set(LOT_REQUEST.LOT_ID, lot)
                .set(LOT_REQUEST.STATE, state.word())
                .set(LOT_REQUEST.ASKED, seeds)
                .set(LOT_REQUEST.REASON, "")
                .set(LOT_REQUEST.ASKED_BY, by)
                .set(LOT_REQUEST.ASKED_AT, audit.now())
                .execute();
    }

    private static List<Concerning> rows(DSLContext from, Table<?> among, Condition which) {
        return from.select(LOT_REQUEST.asterisk(), SOWING.MEMBER_ID, LOT.OWNER_ID, MEMBER.CALLED, MEMBER.LEFT_AT)
                .from(among)
                .join(SOWING)
                .on(SOWING.ID.eq(LOT_REQUEST.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(LOT_REQUEST.LOT_ID))
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(LOT.OWNER_ID))
                .where(which)
                .orderBy(LOT_REQUEST.ASKED_AT, LOT_REQUEST.SOWING_ID)
                .fetch(LotRequestStore::concerning);
    }

    private static Concerning concerning(Record row) {
        return new Concerning(
                new LotRequest(
                        row.get(LOT_REQUEST.SOWING_ID),
                        row.get(LOT_REQUEST.LOT_ID),
                        row.get(MEMBER.CALLED),
                        LotRequest.State.named(row.get(LOT_REQUEST.STATE)),
                        row.get(LOT_REQUEST.ASKED),
                        row.get(LOT_REQUEST.GIVEN),
                        row.get(LOT_REQUEST.REASON)),
                row.get(SOWING.MEMBER_ID),
                row.get(LOT.OWNER_ID),
                row.get(MEMBER.LEFT_AT) != null);
    }
}
