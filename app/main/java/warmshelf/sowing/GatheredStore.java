package warmshelf.sowing;

import static warmshelf.db.generated.Tables.GATHERED;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Keeps what members gathered on Ask until they send it or take it out. */
final class GatheredStore {
    /** More would make a page that nobody reads, and each is judged whenever the page is shown. */
    static final int MOST = 12;

    private final DSLContext sql;
    private final Audit audit;

    GatheredStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A request put aside: what it is called, and the answers of Ask by their fields. */
    record Gathered(UUID id, String title, Map<String, String> answers) {}

    /** What waits to be sent, the first gathered first. */
    List<Gathered> of(UUID member) {
        return sql.select(GATHERED.ID, GATHERED.TITLE, GATHERED.ANSWERS)
                .from(GATHERED)
                .where(waits(member))
                .orderBy(GATHERED.GATHERED_AT, GATHERED.ID)
                .fetch(row -> new Gathered(row.value1(), row.value2(), AskAddress.read(row.value3())));
    }

    /** Puts a plan aside; refused where too many wait already. */
    Decision<UUID> add(UUID member, String title, Map<String, String> answers) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            tx.deleteFrom(GATHERED)
                    .where(GATHERED.MEMBER_ID.eq(member), GATHERED.TAKEN_OUT_AT.isNotNull())
                    .execute();
            if (tx.fetchCount(GATHERED, waits(member)) >= MOST) {
                throw Declined.refused(new SowingRefusal.TooManyGathered(MOST));
            }
            return insert(tx, member, title, answers);
        }));
    }

    private UUID insert(DSLContext tx, UUID member, String title, Map<String, String> answers) {
        UUID id = UUID.randomUUID();
        tx.insertInto(GATHERED)
                .set(GATHERED.ID, id)
                .set(GATHERED.MEMBER_ID, member)
                .set(GATHERED.TITLE, title)
                .set(GATHERED.ANSWERS, AskAddress.written(answers))
                .set(GATHERED.GATHERED_AT, audit.now())
                .execute();
        audit.write(tx, member, "gather", "gathered", id, "");
        return id;
    }

    /** What is to be put aside. */
    record NewlyGathered(String title, Map<String, String> answers) {}

    /**
     * Puts several aside, in one go: as many as may wait, and none that waits already with the same answers.
     *
     * @return how many of them wait now
     */
    int addAll(UUID member, List<NewlyGathered> several) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Set<String> waiting = tx.select(GATHERED.ANSWERS)
                    .from(GATHERED)
                    .where(waits(member))
                    .forUpdate()
                    .fetchSet(GATHERED.ANSWERS);
            int there = 0;
            for (NewlyGathered each : several) {
                boolean waits = waiting.contains(AskAddress.written(each.answers()));
                if (!waits && waiting.size() < MOST) {
                    insert(tx, member, each.title(), each.answers());
                    waits = waiting.add(AskAddress.written(each.answers()));
                }
                there += waits ? 1 : 0;
            }
            return there;
        });
    }

    /** Writes other answers over what waits; overtaken where it was sent or taken out meanwhile. */
    Decision<UUID> change(UUID id, UUID member, String title, Map<String, String> answers) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int changed = tx.update(GATHERED)
                    .set(GATHERED.TITLE, title)
                    .set(GATHERED.ANSWERS, AskAddress.written(answers))
                    .where(GATHERED.ID.eq(id), waits(member))
                    .execute();
            if (changed == 0) {
                throw Declined.overtaken(new SowingRefusal.NotGatheredAnyMore());
            }
            audit.write(tx, member, "change gathered", "gathered", id, "");
            return id;
        }));
    }

    /** Takes it out of what waits, or back into it. */
    boolean takeOut(UUID id, UUID member, boolean out) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Condition waits = GATHERED.TAKEN_OUT_AT.isNull();
            int changed = tx.update(GATHERED)
                    .set(GATHERED.TAKEN_OUT_AT, out ? audit.now() : null)
                    .where(GATHERED.ID.eq(id), GATHERED.MEMBER_ID.eq(member), out ? waits : waits.not())
                    .execute();
            if (changed > 0) {
                audit.write(tx, member, out ? "take out gathered" : "take back gathered", "gathered", id, "");
            }
            return changed > 0;
        });
    }

    /**
     * Ends its waiting in the transaction that sends it; whoever sends it at the same moment waits here and finds it gone.
     *
     * @throws Declined when it was sent or taken out meanwhile; the transaction is to end then
     */
    static void sent(DSLContext tx, UUID id, UUID member) {
        int gone =
                tx.deleteFrom(GATHERED).where(GATHERED.ID.eq(id), waits(member)).execute();
        if (gone == 0) {
            throw Declined.overtaken(new SowingRefusal.NotGatheredAnyMore());
        }
    }

    private static Condition waits(UUID member) {
        return GATHERED.MEMBER_ID.eq(member).and(GATHERED.TAKEN_OUT_AT.isNull());
    }
}
