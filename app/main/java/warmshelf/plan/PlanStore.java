package warmshelf.plan;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SEASON_PLAN;
import static warmshelf.db.generated.Tables.SEASON_PLAN_EDIT;
import static warmshelf.db.generated.Tables.SEASON_PLAN_FREED;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.plan.engine.SeasonPlan;

/**
 * Keeps plans. One run at a time has the turn, by a key in the database, so that two coordinators or two nodes never run two;
 * a run that has not said for a minute that it is alive has lost its turn.
 */
final class PlanStore {
    static final Duration SILENCE = Duration.ofMinutes(1);

    private static final String TURN = "season";
    private static final int LONGEST_WORDS = 400;
    private static final int PLANS_LISTED = 30;

    private final DSLContext sql;
    private final Audit audit;

    PlanStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A change made by hand; {@code version} is the one it led to. */
    record Edit(int version, String words, String by) {}

    /**
     * How a run is made.
     *
     * @param withLight whether who asked for a place under a light after the mat must get one
     */
    record Manner(long startingNumber, int seconds, boolean withLight) {}

    /**
     * Takes the turn for a run, unless another has it.
     *
     * @return the id of the plan
     */
    Decision<UUID> begin(SeasonQuestion question, Collection<UUID> freed, Manner manner, UUID by) {
        UUID id = UUID.randomUUID();
        try {
            insert(id, question, freed, manner, by);
        } catch (DataAccessException refused) {
            if (!refused.sqlState().startsWith("23")) {
                throw refused;
            }
            if (turnIsTaken()) {
                return new Decision.Overtaken<>(new PlanRefusal.AnotherRuns());
            }
            // Whoever had the turn ended in this very moment.
            insert(id, question, freed, manner, by);
        }
        return new Decision.Done<>(id);
    }

    private void insert(UUID id, SeasonQuestion question, Collection<UUID> freed, Manner manner, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            loseSilent(tx);
            insert(tx, id, question, manner, by);
            freed.forEach(stay -> tx.insertInto(SEASON_PLAN_FREED)
                    .set(SEASON_PLAN_FREED.PLAN_ID, id)
                    .set(SEASON_PLAN_FREED.STAY_ID, stay)
                    .execute());
            audit.write(
                    tx,
                    by,
                    "plan season",
                    "plan",
                    id,
                    "starting number %d, %d seconds".formatted(manner.startingNumber(), manner.seconds()));
        });
    }

    private boolean turnIsTaken() {
        return sql.fetchExists(SEASON_PLAN, SEASON_PLAN.RUNNING.eq(TURN));
    }

    private void insert(DSLContext tx, UUID id, SeasonQuestion question, Manner manner, UUID by) {
        int requests = question.asked().size();
        tx.insertInto(SEASON_PLAN)
                .set(SEASON_PLAN.ID, id)
                .set(SEASON_PLAN.STATE, KeptPlan.State.RUNNING.word())
                .set(SEASON_PLAN.RUNNING, TURN)
                .set(SEASON_PLAN.SEED, manner.startingNumber())
                .set(SEASON_PLAN.SECONDS, manner.seconds())
                .set(SEASON_PLAN.WITH_LIGHT, manner.withLight())
                .set(SEASON_PLAN.QUESTION_HASH, question.hash())
                .set(SEASON_PLAN.ASKED_BY, by)
                .set(SEASON_PLAN.ASKED_AT, audit.now())
                .set(SEASON_PLAN.BEAT_AT, audit.now())
                .set(SEASON_PLAN.CANCEL_ASKED, false)
                .set(SEASON_PLAN.SPENT_SECONDS, 0)
                .set(SEASON_PLAN.REQUESTS, requests)
                .set(SEASON_PLAN.PLACED_AT_MOST, requests)
                .set(SEASON_PLAN.OPTIMAL, false)
                .set(SEASON_PLAN.PLAN, PlanJson.write(PlanJson.NOTHING))
                .set(SEASON_PLAN.VERSION, 1)
                .execute();
    }

    /** Runs that fell silent lose their turn and keep their best plan. */
    private void loseSilent(DSLContext tx) {
        tx.update(SEASON_PLAN)
                .set(SEASON_PLAN.STATE, KeptPlan.State.LOST.word())
                .setNull(SEASON_PLAN.RUNNING)
                .where(SEASON_PLAN.RUNNING.eq(TURN), SEASON_PLAN.BEAT_AT.lt(silentSince()))
                .execute();
    }

    private OffsetDateTime silentSince() {
        return audit.now().minus(SILENCE);
    }

    /**
     * Says that a run is alive.
     *
     * @return false when it has lost its turn or is asked to stop
     */
    boolean beat(UUID id, int spentSeconds) {
        sql.update(SEASON_PLAN)
                .set(SEASON_PLAN.BEAT_AT, audit.now())
                .set(SEASON_PLAN.SPENT_SECONDS, spentSeconds)
                .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.RUNNING.eq(TURN))
                .execute();
        return sql.fetchExists(
                SEASON_PLAN, SEASON_PLAN.ID.eq(id), SEASON_PLAN.RUNNING.eq(TURN), SEASON_PLAN.CANCEL_ASKED.isFalse());
    }

    /** Keeps the best plan so far of a run that has its turn. */
    void keepBest(UUID id, SeasonPlanner.Progress progress) {
        sql.update(SEASON_PLAN)
                .set(SEASON_PLAN.PLAN, PlanJson.write(progress.best()))
                .set(SEASON_PLAN.PLACED_AT_MOST, progress.placedAtMost())
                .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.RUNNING.eq(TURN))
                .execute();
    }

    /** The run is over; what it found is proposed. A run that has lost its turn changes nothing. */
    void finish(UUID id, SeasonPlanner.Found found, int spentSeconds) {
        sql.update(SEASON_PLAN)
                .set(SEASON_PLAN.STATE, KeptPlan.State.PROPOSED.word())
                .setNull(SEASON_PLAN.RUNNING)
                .set(SEASON_PLAN.PLAN, PlanJson.write(found.plan()))
                .set(SEASON_PLAN.PLACED_AT_MOST, found.placedAtMost())
                .set(SEASON_PLAN.OPTIMAL, found.optimal())
                .set(SEASON_PLAN.SPENT_SECONDS, spentSeconds)
                .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.RUNNING.eq(TURN))
                .execute();
    }

    /** The run broke off by a fault of the program. */
    void fail(UUID id) {
        sql.update(SEASON_PLAN)
                .set(SEASON_PLAN.STATE, KeptPlan.State.FAILED.word())
                .setNull(SEASON_PLAN.RUNNING)
                .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.RUNNING.eq(TURN))
                .execute();
    }

    /** Asks a run to stop with the best it has. */
    Decision<UUID> askToStop(UUID id, UUID by) {
        boolean asked = sql.transactionResult(inside -> markToStop(inside.dsl(), id, by));
        if (asked) {
            return new Decision.Done<>(id);
        }
        return find(id).<Decision<UUID>>map(plan -> new Decision.Overtaken<>(new PlanRefusal.DoesNotRun(plan.state())))
                .orElseGet(Decision.Missing::new);
    }

    private boolean markToStop(DSLContext tx, UUID id, UUID by) {
        loseSilent(tx);
        int asked = tx.update(SEASON_PLAN)
                .set(SEASON_PLAN.CANCEL_ASKED, true)
                .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.RUNNING.eq(TURN))
                .execute();
        if (asked == 1) {
            audit.write(tx, by, "stop plan", "plan", id, "");
        }
        return asked == 1;
    }

    /**
     * Keeps a plan changed by hand, if nobody else changed it since that version and it is open still.
     *
     * @return the version it is now
     */
    Decision<Integer> change(UUID id, int version, SeasonPlan plan, String words, UUID by) {
        String kept = words.length() <= LONGEST_WORDS ? words : words.substring(0, LONGEST_WORDS);
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            loseSilent(tx);
            int changed = tx.update(SEASON_PLAN)
                    .set(SEASON_PLAN.PLAN, PlanJson.write(plan))
                    .set(SEASON_PLAN.VERSION, version + 1)
                    .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.VERSION.eq(version), open())
                    .execute();
            if (changed == 0) {
                throw Declined.overtaken(new PlanRefusal.EditNotKept(words));
            }
            tx.insertInto(SEASON_PLAN_EDIT)
                    .set(SEASON_PLAN_EDIT.PLAN_ID, id)
                    .set(SEASON_PLAN_EDIT.VERSION, version + 1)
                    .set(SEASON_PLAN_EDIT.WORDS, kept)
                    .set(SEASON_PLAN_EDIT.MADE_BY, by)
                    .set(SEASON_PLAN_EDIT.MADE_AT, audit.now())
                    .execute();
            audit.write(tx, by, "change plan", "plan", id, kept);
            return version + 1;
        }));
    }

    /**
     * Takes a plan of that version for publication, within the caller's transaction.
     *
     * @throws Declined when somebody changed or published it since
     */
    void publish(DSLContext tx, UUID id, int version, UUID by) {
        loseSilent(tx);
        int changed = tx.update(SEASON_PLAN)
                .set(SEASON_PLAN.STATE, KeptPlan.State.PUBLISHED.word())
                .set(SEASON_PLAN.PUBLISHED_BY, by)
                .set(SEASON_PLAN.PUBLISHED_AT, audit.now())
                .set(SEASON_PLAN.VERSION, version + 1)
                .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.VERSION.eq(version), open())
                .execute();
        if (changed == 0) {
            throw Declined.overtaken(new PlanRefusal.PlanChanged());
        }
    }

    /**
     * Marks a publication as undone, within the caller's transaction.
     *
     * @throws Declined when it is not published
     */
    void undo(DSLContext tx, UUID id, UUID by) {
        int changed = tx.update(SEASON_PLAN)
                .set(SEASON_PLAN.STATE, KeptPlan.State.UNDONE.word())
                .set(SEASON_PLAN.UNDONE_BY, by)
                .set(SEASON_PLAN.UNDONE_AT, audit.now())
                .set(SEASON_PLAN.VERSION, SEASON_PLAN.VERSION.plus(1))
                .where(SEASON_PLAN.ID.eq(id), SEASON_PLAN.STATE.eq(KeptPlan.State.PUBLISHED.word()))
                .execute();
        if (changed == 0) {
            throw Declined.overtaken(new PlanRefusal.NothingToUndo());
        }
    }

    private static Condition open() {
        return SEASON_PLAN.STATE.in(KeptPlan.State.PROPOSED.word(), KeptPlan.State.LOST.word());
    }

    /** What was changed by hand after a version, the oldest first. */
    List<Edit> editsSince(UUID id, int version) {
        return sql.select(SEASON_PLAN_EDIT.VERSION, SEASON_PLAN_EDIT.WORDS, MEMBER.CALLED)
                .from(SEASON_PLAN_EDIT)
                .join(MEMBER)
                .on(MEMBER.ID.eq(SEASON_PLAN_EDIT.MADE_BY))
                .where(SEASON_PLAN_EDIT.PLAN_ID.eq(id), SEASON_PLAN_EDIT.VERSION.gt(version))
                .orderBy(SEASON_PLAN_EDIT.VERSION)
                .fetch(row -> new Edit(row.value1(), row.value2(), row.value3()));
    }

    Optional<KeptPlan> find(UUID id) {
        return plans(SEASON_PLAN.ID.eq(id)).stream().findFirst();
    }

    /** The newest first. */
    List<KeptPlan> newest() {
        return plans(DSL.noCondition());
    }

    /** The publication that would be undone: the last that was not. */
    Optional<KeptPlan> lastPublished() {
        return plans(SEASON_PLAN.STATE.eq(KeptPlan.State.PUBLISHED.word())).stream()
                .max(java.util.Comparator.comparing(plan -> java.util.Objects.requireNonNull(plan.publishedAt())));
    }

    private List<KeptPlan> plans(Condition which) {
        var publisher = MEMBER.as("publisher");
        return sql.select(SEASON_PLAN.asterisk(), MEMBER.CALLED, publisher.CALLED)
                .from(SEASON_PLAN)
                .join(MEMBER)
                .on(MEMBER.ID.eq(SEASON_PLAN.ASKED_BY))
                .leftJoin(publisher)
                .on(publisher.ID.eq(SEASON_PLAN.PUBLISHED_BY))
                .where(which)
                .orderBy(SEASON_PLAN.ASKED_AT.desc(), SEASON_PLAN.ID)
                .limit(PLANS_LISTED)
                .fetch(found -> plan(found, found.get(publisher.CALLED)));
    }

    private KeptPlan plan(Record found, @org.jspecify.annotations.Nullable String publisher) {
        UUID id = found.get(SEASON_PLAN.ID);
        KeptPlan.State kept = KeptPlan.State.named(found.get(SEASON_PLAN.STATE));
        boolean silent = found.get(SEASON_PLAN.BEAT_AT).isBefore(silentSince());
        return new KeptPlan(
                id,
                kept == KeptPlan.State.RUNNING && silent ? KeptPlan.State.LOST : kept,
                found.get(SEASON_PLAN.SEED),
                found.get(SEASON_PLAN.SECONDS),
                found.get(SEASON_PLAN.WITH_LIGHT),
                found.get(SEASON_PLAN.QUESTION_HASH),
                found.get(MEMBER.CALLED),
                found.get(SEASON_PLAN.ASKED_AT),
                found.get(SEASON_PLAN.CANCEL_ASKED),
                found.get(SEASON_PLAN.SPENT_SECONDS),
                found.get(SEASON_PLAN.REQUESTS),
                found.get(SEASON_PLAN.PLACED_AT_MOST),
                found.get(SEASON_PLAN.OPTIMAL),
                PlanJson.read(found.get(SEASON_PLAN.PLAN)),
                freed(id),
                publisher,
                found.get(SEASON_PLAN.PUBLISHED_AT),
                found.get(SEASON_PLAN.VERSION));
    }

    private Set<UUID> freed(UUID plan) {
        return new HashSet<>(sql.select(SEASON_PLAN_FREED.STAY_ID)
                .from(SEASON_PLAN_FREED)
                .where(SEASON_PLAN_FREED.PLAN_ID.eq(plan))
                .fetch(SEASON_PLAN_FREED.STAY_ID));
    }
}
