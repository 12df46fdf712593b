package warmshelf.db;

import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** Writes the line that every change leaves: who did what to which thing, when, and by which token where a script did. */
public final class Audit {
    private static final int LONGEST_DETAIL = 1000;

    private final Clock clock;

    public Audit(Clock clock) {
        this.clock = clock;
    }

    /** The moment to stamp a write with: UTC, in whole milliseconds, as both engines keep it. */
    public OffsetDateTime now() {
        return OffsetDateTime.ofInstant(java.time.Instant.ofEpochMilli(clock.millis()), ZoneOffset.UTC);
    }

    /**
     * Adds a line within the caller's transaction, and counts the form that is being answered, if one is.
     *
     * @param by the member who did it; null for the program itself
     * @throws Submission.AlreadyCounted when the same form has written before
     */
    public void write(
            DSLContext sql, @Nullable UUID by, String action, String subject, Object subjectId, String detail) {
        String kept = detail.length() <= LONGEST_DETAIL ? detail : detail.substring(0, LONGEST_DETAIL);
        Submission.claim(sql, now());
        sql.insertInto(AUDIT_LINE)
                .set(AUDIT_LINE.ID, UUID.randomUUID())
                .set(AUDIT_LINE.AT, now())
                .set(AUDIT_LINE.MEMBER_ID, by)
                .set(AUDIT_LINE.ACTION, action)
                .set(AUDIT_LINE.SUBJECT, subject)
                .set(AUDIT_LINE.SUBJECT_ID, String.valueOf(subjectId))
                .set(AUDIT_LINE.DETAIL, kept)
                .set(AUDIT_LINE.TOKEN_NAME, ScriptAtWork.tokenName())
                .execute();
    }
}
