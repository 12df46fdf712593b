package warmshelf.reminder.push;

import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/**
 * Keeps notices until they are sent, as letters are kept: a node that sends one takes it for some minutes first; if it dies,
 * another sends it, so a notice may come twice but is never lost. What is out of date by then is given up.
 */
public final class PushNoticeStore {
    private static final Duration TAKEN_FOR = Duration.ofMinutes(10);
    private static final Duration GIVEN_UP_AFTER = Duration.ofDays(1);
    private static final Duration LONGEST_WAIT = Duration.ofHours(1);
    private static final int AT_ONCE = 20;

    private final DSLContext sql;
    private final Audit audit;

    public PushNoticeStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A notice to be sent; {@code tries} counts this one. */
    record Ready(UUID id, UUID address, PushTarget target, PushMessage notice, OffsetDateTime madeAt, int tries) {}

    /** Whether a member was told of a thing already, or is about to be. */
    public boolean knows(UUID member, String about) {
        return sql.fetchExists(PUSH_NOTICE, PUSH_NOTICE.MEMBER_ID.eq(member), PUSH_NOTICE.ABOUT.eq(about));
    }

    /** Lays a notice ready for each of a member's devices, unless the member is told of the thing already. */
    public void lay(UUID member, PushMessage notice) {
        if (knows(member, notice.about())) {
            return;
        }
        sql.select(PUSH_ADDRESS.ID)
                .from(PUSH_ADDRESS)
                .where(PUSH_ADDRESS.MEMBER_ID.eq(member), PushAddressStore.isLive(audit.now()))
                .fetch(PUSH_ADDRESS.ID)
                .forEach(address -> lay(member, address, notice));
    }

    /** Lays a notice ready for one of a member's devices; false when it is not told. */
    public boolean layFor(UUID member, UUID address, PushMessage notice) {
        boolean told = sql.fetchExists(
                PUSH_ADDRESS,
                PUSH_ADDRESS.ID.eq(address),
                PUSH_ADDRESS.MEMBER_ID.eq(member),
                PushAddressStore.isLive(audit.now()));
        if (told) {
            lay(member, address, notice);
        }
        return told;
    }

    private void forgetOld() {
        sql.deleteFrom(PUSH_NOTICE)
                .where(PUSH_NOTICE.MADE_AT.lt(audit.now().minus(MessageLife.KEPT)))
                .and(PUSH_NOTICE.SENT_AT.isNotNull().or(PUSH_NOTICE.GIVEN_UP_AT.isNotNull()))
                .execute();
    }

    private void lay(UUID member, UUID address, PushMessage notice) {
        forgetOld();
        try {
            sql.insertInto(PUSH_NOTICE)
                    .set(PUSH_NOTICE.ID, UUID.randomUUID())
                    .set(PUSH_NOTICE.ADDRESS_ID, address)
                    .set(PUSH_NOTICE.MEMBER_ID, member)
                    .set(PUSH_NOTICE.ABOUT, notice.about())
                    .set(PUSH_NOTICE.TITLE, notice.title())
                    .set(PUSH_NOTICE.BODY, notice.body())
                    .set(PUSH_NOTICE.PATH, notice.path())
                    .set(PUSH_NOTICE.URGENCY, notice.urgent() ? "high" : "normal")
                    .set(PUSH_NOTICE.TOPIC, notice.topic())
                    .set(PUSH_NOTICE.UNTIL_AT, notice.until().atOffset(ZoneOffset.UTC))
                    .set(PUSH_NOTICE.MADE_AT, audit.now())
                    .set(PUSH_NOTICE.DUE_AT, audit.now())
                    .set(PUSH_NOTICE.TRIES, 0)
                    .execute();
        } catch (IntegrityConstraintViolationException toldMeanwhile) {
            // Another node thought of it at the same moment; its notice will do.
        }
    }

    /** Takes the notices that are due, so that nobody else sends them for a while; gives up those that are of no use now. */
    List<Ready> take() {
        OffsetDateTime now = audit.now();
        var live = DSL.field(PushAddressStore.isLive(now).and(PUSH_ADDRESS.MEMBER_ID.eq(PUSH_NOTICE.MEMBER_ID)));
        return sql
                .select(PUSH_NOTICE.asterisk())
                .select(PUSH_ADDRESS.ENDPOINT, PUSH_ADDRESS.P256DH, PUSH_ADDRESS.AUTH)
                .select(live.as("live"))
                .from(PUSH_NOTICE)
                .join(PUSH_ADDRESS)
                .on(PUSH_ADDRESS.ID.eq(PUSH_NOTICE.ADDRESS_ID))
                .where(PUSH_NOTICE.SENT_AT.isNull(), PUSH_NOTICE.GIVEN_UP_AT.isNull(), PUSH_NOTICE.DUE_AT.le(now))
                .orderBy(PUSH_NOTICE.DUE_AT, PUSH_NOTICE.ID)
                .limit(AT_ONCE)
                .fetch()
                .stream()
                .flatMap(row -> takeOne(row, now).stream())
                .toList();
    }

    private Optional<Ready> takeOne(Record row, OffsetDateTime now) {
        boolean ofUse = Boolean.TRUE.equals(row.get("live", Boolean.class))
                && row.get(PUSH_NOTICE.UNTIL_AT).isAfter(now);
        if (!ofUse) {
            giveUp(row.get(PUSH_NOTICE.ID));
            return Optional.empty();
        }
        int taken = sql.update(PUSH_NOTICE)
                .set(PUSH_NOTICE.DUE_AT, now.plus(TAKEN_FOR))
                .set(PUSH_NOTICE.TRIES, PUSH_NOTICE.TRIES.plus(1))
                .where(
                        PUSH_NOTICE.ID.eq(row.get(PUSH_NOTICE.ID)),
                        PUSH_NOTICE.DUE_AT.eq(row.get(PUSH_NOTICE.DUE_AT)),
                        PUSH_NOTICE.SENT_AT.isNull())
                .execute();
        return taken == 1 ? Optional.of(ready(row)) : Optional.empty();
    }

    private static Ready ready(Record row) {
        return new Ready(
                row.get(PUSH_NOTICE.ID),
                row.get(PUSH_NOTICE.ADDRESS_ID),
                new PushTarget(
                        row.get(PUSH_ADDRESS.ENDPOINT), row.get(PUSH_ADDRESS.P256DH), row.get(PUSH_ADDRESS.AUTH)),
                new PushMessage(
                        row.get(PUSH_NOTICE.ABOUT),
                        row.get(PUSH_NOTICE.TITLE),
                        row.get(PUSH_NOTICE.BODY),
                        row.get(PUSH_NOTICE.PATH),
                        row.get(PUSH_NOTICE.URGENCY).equals("high"),
                        row.get(PUSH_NOTICE.TOPIC),
                        row.get(PUSH_NOTICE.UNTIL_AT).toInstant()),
                row.get(PUSH_NOTICE.MADE_AT),
                row.get(PUSH_NOTICE.TRIES) + 1);
    }

    void sent(Ready ready) {
        sql.transaction(inside -> {
            inside.dsl()
                    .update(PUSH_NOTICE)
                    .set(PUSH_NOTICE.SENT_AT, audit.now())
                    .where(PUSH_NOTICE.ID.eq(ready.id()))
                    .execute();
            inside.dsl()
                    .update(PUSH_ADDRESS)
                    .set(PUSH_ADDRESS.LAST_TOLD_AT, audit.now())
                    .where(PUSH_ADDRESS.ID.eq(ready.address()))
                    .execute();
        });
    }

    /**
     * It was not taken: tried again, each time later and not before the service asks to be asked, and given up after a day.
     *
     * @return whether it is tried again
     */
    boolean later(Ready ready, Duration asked) {
        Duration own = Duration.ofMinutes(1L << Math.min(ready.tries(), 6));
        Duration wait = own.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : own;
        OffsetDateTime due = audit.now().plus(asked.compareTo(wait) > 0 ? asked : wait);
        boolean worthIt = due.isBefore(ready.madeAt().plus(GIVEN_UP_AFTER))
                && due.toInstant().isBefore(ready.notice().until());
        if (worthIt) {
            sql.update(PUSH_NOTICE)
                    .set(PUSH_NOTICE.DUE_AT, due)
                    .where(PUSH_NOTICE.ID.eq(ready.id()))
                    .execute();
        } else {
            giveUp(ready.id());
        }
        return worthIt;
    }

    void giveUp(UUID notice) {
        sql.update(PUSH_NOTICE)
                .set(PUSH_NOTICE.GIVEN_UP_AT, audit.now())
                .where(PUSH_NOTICE.ID.eq(notice))
                .execute();
    }
}
