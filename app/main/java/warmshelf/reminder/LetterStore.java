package warmshelf.reminder;

import static warmshelf.db.generated.Tables.LETTER;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.reminder.push.MessageLife;

/**
 * Keeps letters until they are sent. A node that sends one takes it for some minutes first; if it dies, another sends it, so a
 * letter may come twice but is never lost.
 */
final class LetterStore {
    static final int MOST_TRIES = 8;
    private static final Duration TAKEN_FOR = Duration.ofMinutes(10);
    private static final int AT_ONCE = 20;
    private static final int LONGEST_SUBJECT = 200;

    private final DSLContext sql;
    private final Audit audit;

    LetterStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A letter to be sent; {@code tries} counts this one. */
    record Letter(UUID id, String address, String subject, String words, int tries) {}

    /** Whether a member was told of a thing already, or is about to be. */
    boolean knows(UUID member, String about) {
        return sql.fetchExists(LETTER, LETTER.MEMBER_ID.eq(member), LETTER.ABOUT.eq(about));
    }

    /** Lays a letter ready, unless the member is told of the thing already. */
    void write(UUID member, String about, String address, String subject, String words) {
        if (knows(member, about)) {
            return;
        }
        forgetOld();
        try {
            sql.insertInto(LETTER)
                    .set(LETTER.ID, UUID.randomUUID())
                    .set(LETTER.MEMBER_ID, member)
                    .set(LETTER.ABOUT, about)
                    .set(LETTER.ADDRESS, address)
                    .set(
                            LETTER.SUBJECT,
                            subject.length() <= LONGEST_SUBJECT ? subject : subject.substring(0, LONGEST_SUBJECT))
                    .set(LETTER.WORDS, words)
                    .set(LETTER.MADE_AT, audit.now())
                    .set(LETTER.DUE_AT, audit.now())
                    .set(LETTER.TRIES, 0)
                    .execute();
        } catch (IntegrityConstraintViolationException toldMeanwhile) {
            // Another node thought of it at the same moment; its letter will do.
        }
    }

    private void forgetOld() {
        sql.deleteFrom(LETTER)
                .where(LETTER.MADE_AT.lt(audit.now().minus(MessageLife.KEPT)))
                .and(LETTER.SENT_AT.isNotNull().or(LETTER.GIVEN_UP_AT.isNotNull()))
                .execute();
    }

    /** Takes the letters that are due, so that nobody else sends them for a while. */
    List<Letter> take() {
        OffsetDateTime now = audit.now();
        return sql
                .select(LETTER.ID, LETTER.DUE_AT, LETTER.ADDRESS, LETTER.SUBJECT, LETTER.WORDS, LETTER.TRIES)
                .from(LETTER)
                .where(LETTER.SENT_AT.isNull(), LETTER.GIVEN_UP_AT.isNull(), LETTER.DUE_AT.le(now))
                .orderBy(LETTER.DUE_AT, LETTER.ID)
                .limit(AT_ONCE)
                .fetch()
                .stream()
                .flatMap(row -> {
                    int taken = sql.update(LETTER)
                            .set(LETTER.DUE_AT, now.plus(TAKEN_FOR))
                            .set(LETTER.TRIES, LETTER.TRIES.plus(1))
                            .where(LETTER.ID.eq(row.value1()), LETTER.DUE_AT.eq(row.value2()), LETTER.SENT_AT.isNull())
                            .execute();
                    return taken == 1
                            ? Optional.of(new Letter(
                                            row.value1(), row.value3(), row.value4(), row.value5(), row.value6() + 1))
                                    .stream()
                            : java.util.stream.Stream.<Letter>empty();
                })
                .toList();
    }

    void sent(UUID letter) {
        sql.update(LETTER)
                .set(LETTER.SENT_AT, audit.now())
                .where(LETTER.ID.eq(letter))
                .execute();
    }

    /** It was not taken: tried again, each time later, and at last given up. */
    void failed(Letter letter) {
        if (letter.tries() >= MOST_TRIES) {
            sql.update(LETTER)
                    .set(LETTER.GIVEN_UP_AT, audit.now())
                    .where(LETTER.ID.eq(letter.id()))
                    .execute();
            return;
        }
        Duration later = Duration.ofMinutes(1L << letter.tries());
        sql.update(LETTER)
                .set(LETTER.DUE_AT, audit.now().plus(later))
                .where(LETTER.ID.eq(letter.id()))
                .execute();
    }
}
