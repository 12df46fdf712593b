package warmshelf.program;

import static warmshelf.db.generated.Tables.PROGRAM_ANSWER;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/**
 * The answers to what scripts sent, by the key that each sending carries, so that one which is sent again gets its first answer
 * again. Where the server stopped between keeping what was sent and keeping its answer, it is judged once more after a minute;
 * what takes it knows by its own ids and days that it is there already.
 */
final class ProgramAnswerStore {
    /** A script that had no answer tries again within days. */
    private static final Duration KEPT = Duration.ofDays(7);
    /** Nothing takes that long to answer. */
    private static final Duration GIVEN_UP = Duration.ofMinutes(1);

    private final Database database;
    private final Audit audit;

    ProgramAnswerStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /**
     * One sending of a script.
     *
     * @param keyHash of the key it carries
     * @param contentHash of its address and content
     */
    record Sending(UUID token, String keyHash, String contentHash) {}

    /** What is known of a sending. */
    sealed interface Known {
        /** It is to be answered now, by whoever asked. */
        record Fresh() implements Known {}

        /** It was answered so. */
        record Answered(String answer) implements Known {}

        /** The same key came with other content. */
        record OtherContent() implements Known {}

        /** The same is being answered at this moment. */
        record UnderWay() implements Known {}
    }

    /** What is known of a sending; one that is fresh is claimed, so that nobody else answers it meanwhile. */
    Known claim(Sending sending) {
        OffsetDateTime now = audit.now();
        return database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            tx.deleteFrom(PROGRAM_ANSWER)
                    .where(PROGRAM_ANSWER.CLAIMED_AT.lt(now.minus(KEPT)))
                    .execute();
            return claimed(tx, sending, now) ? new Known.Fresh() : known(tx, sending, now);
        });
    }

    /** Of two that arrive at once H2 may find the other's row only as it writes its own, and refuse it as a second. */
    private static boolean claimed(DSLContext tx, Sending sending, OffsetDateTime now) {
        try {
            return tx.insertInto(PROGRAM_ANSWER)
                            .set(PROGRAM_ANSWER.TOKEN_ID, sending.token())
                            .set(PROGRAM_ANSWER.KEY_HASH, sending.keyHash())
                            .set(PROGRAM_ANSWER.CONTENT_HASH, sending.contentHash())
                            .set(PROGRAM_ANSWER.CLAIMED_AT, now)
                            .onConflictDoNothing()
                            .execute()
                    == 1;
        } catch (IntegrityConstraintViolationException thereAlready) {
            return false;
        }
    }

    private static Known known(DSLContext tx, Sending sending, OffsetDateTime now) {
        Record row =
                tx.selectFrom(PROGRAM_ANSWER).where(is(sending)).forUpdate().fetchOne();
        if (row == null) {
            return new Known.UnderWay();
        }
        if (!row.get(PROGRAM_ANSWER.CONTENT_HASH).equals(sending.contentHash())) {
            return new Known.OtherContent();
        }
        @Nullable String answer = row.get(PROGRAM_ANSWER.ANSWER);
        if (answer != null) {
            return new Known.Answered(answer);
        }
        if (row.get(PROGRAM_ANSWER.CLAIMED_AT).isAfter(now.minus(GIVEN_UP))) {
            return new Known.UnderWay();
        }
        tx.update(PROGRAM_ANSWER)
                .set(PROGRAM_ANSWER.CLAIMED_AT, now)
                .where(is(sending))
                .execute();
        return new Known.Fresh();
    }

    /** Keeps the answer of a claimed sending; it is on the disk itself before the script is told. */
    void keep(Sending sending, String answer) {
        database.sql()
                .update(PROGRAM_ANSWER)
                .set(PROGRAM_ANSWER.ANSWER, answer)
                .where(is(sending))
                .execute();
        database.flush();
    }

    /** Gives up a claim of which nothing was kept, so that the same key may come with better content. */
    void release(Sending sending) {
        database.sql()
                .deleteFrom(PROGRAM_ANSWER)
                .where(is(sending), PROGRAM_ANSWER.ANSWER.isNull())
                .execute();
    }

    private static Condition is(Sending sending) {
        return PROGRAM_ANSWER.TOKEN_ID.eq(sending.token()).and(PROGRAM_ANSWER.KEY_HASH.eq(sending.keyHash()));
    }
}
