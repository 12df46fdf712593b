package warmshelf.db;

import static warmshelf.db.generated.Tables.SUBMISSION;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jooq.Configuration;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.jspecify.annotations.Nullable;

/**
 * A form that a member has sent, while it is being answered. The first line that its answering writes in the audit also writes
 * the form's row, in the same transaction, so that a form which arrives twice, even at two nodes at once, writes once.
 *
 * <p>It hangs on the thread because every write of every feature already goes by {@link Audit}: a feature that comes later is
 * kept from counting twice without a line of its own.
 */
public final class Submission {
    /** A form is sent again within moments, or by a page that was left open; nobody keeps one open that long. */
    public static final Duration KEPT = Duration.ofDays(30);

    private static final ThreadLocal<@Nullable Submission> CURRENT = new ThreadLocal<>();

    private final String fingerprint;
    private final UUID member;
    private final UUID request = UUID.randomUUID();
    private @Nullable Configuration claimedWith;

    private Submission(String fingerprint, UUID member) {
        this.fingerprint = fingerprint;
        this.member = member;
    }

    /** That the same form has written already. */
    public static final class AlreadyCounted extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** Something that may fail in any way. */
    public interface Work<E extends Exception> {
        void run() throws E;
    }

    /**
     * Does what a form asks for.
     *
     * @param fingerprint what tells this form from every other, at most 64 characters
     * @throws AlreadyCounted when the same form has written meanwhile; nothing is written then
     */
    public static <E extends Exception> void answering(String fingerprint, UUID member, Work<E> work) throws E {
        CURRENT.set(new Submission(fingerprint, member));
        try {
            work.run();
        } finally {
            CURRENT.remove();
        }
    }

    /** Writes the row of the form that this thread answers, if it answers one, within the caller's transaction. */
    static void claim(DSLContext sql, OffsetDateTime now) {
        Submission submission = CURRENT.get();
        // The configuration is the transaction's: another one may follow upon a rollback, which took the row away.
        if (submission != null && submission.claimedWith != sql.configuration()) {
            submission.claimRow(sql, now);
            submission.claimedWith = sql.configuration();
        }
    }

    private void claimRow(DSLContext sql, OffsetDateTime now) {
        sql.deleteFrom(SUBMISSION).where(SUBMISSION.SENT_AT.lt(now.minus(KEPT))).execute();
        if (!added(sql, now) && !isMine(sql)) {
            throw new AlreadyCounted();
        }
    }

    /** Of two that arrive at once H2 may find the other's row only as it writes its own, and refuse it as a second. */
    private boolean added(DSLContext sql, OffsetDateTime now) {
        try {
            return sql.insertInto(SUBMISSION)
                            .set(SUBMISSION.FINGERPRINT, fingerprint)
                            .set(SUBMISSION.MEMBER_ID, member)
                            .set(SUBMISSION.REQUEST_ID, request)
                            .set(SUBMISSION.SENT_AT, now)
                            .onConflictDoNothing()
                            .execute()
                    == 1;
        } catch (IntegrityConstraintViolationException thereAlready) {
            return false;
        }
    }

    private boolean isMine(DSLContext sql) {
        return sql.fetchExists(
                SUBMISSION, SUBMISSION.FINGERPRINT.eq(fingerprint).and(SUBMISSION.REQUEST_ID.eq(request)));
    }
}
