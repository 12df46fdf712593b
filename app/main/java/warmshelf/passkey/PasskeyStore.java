package warmshelf.passkey;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PASSKEY;
import static warmshelf.db.generated.Tables.PASSKEY_CHALLENGE;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.group.SessionStore;
import warmshelf.group.Token;

/** Keeps passkeys, and what devices are asked to sign: each question is answered once at most, whichever node it comes to. */
public final class PasskeyStore {
    static final int MOST = 12;
    static final Duration LIFE = Duration.ofMinutes(5);
    private static final String SUBJECT = "passkey";

    private final Database database;
    private final Audit audit;
    private final SessionStore sessions;

    public PasskeyStore(Database database, Audit audit, SessionStore sessions) {
        this.database = database;
        this.audit = audit;
        this.sessions = sessions;
    }

    /** A member's own, the oldest first. */
    List<Passkey> of(UUID memberId, ZoneId zone) {
        return database.sql()
                .select(PASSKEY.ID, PASSKEY.NAME, PASSKEY.MADE_AT, PASSKEY.LAST_USED_AT)
                .from(PASSKEY)
                .where(PASSKEY.MEMBER_ID.eq(memberId))
                .orderBy(PASSKEY.MADE_AT, PASSKEY.ID)
                .fetch(row -> new Passkey(
                        row.value1(), row.value2(), day(row.value3(), zone), dayOrNull(row.value4(), zone)));
    }

    private static LocalDate day(OffsetDateTime at, ZoneId zone) {
        return at.atZoneSameInstant(zone).toLocalDate();
    }

    private static @Nullable LocalDate dayOrNull(@Nullable OffsetDateTime at, ZoneId zone) {
        return at == null ? null : day(at, zone);
    }

    /** By what a member's devices name their keys, so that none makes a second one. */
    List<String> credentials(UUID memberId) {
        return database.sql()
                .select(PASSKEY.CREDENTIAL_ID)
                .from(PASSKEY)
                .where(PASSKEY.MEMBER_ID.eq(memberId))
                .fetch(PASSKEY.CREDENTIAL_ID);
    }

    /**
     * Something new to be signed.
     *
     * @param memberId who adds a passkey; null: somebody signs in
     * @param name of the new passkey; empty at signing in
     */
    String ask(@Nullable UUID memberId, String name) {
        String challenge = Token.random();
        database.sql().transaction(inside -> {
            DSLContext tx = inside.dsl();
            tx.deleteFrom(PASSKEY_CHALLENGE)
                    .where(PASSKEY_CHALLENGE.EXPIRES_AT.lt(audit.now()))
                    .execute();
            tx.insertInto(PASSKEY_CHALLENGE)
                    .set(PASSKEY_CHALLENGE.CHALLENGE_HASH, Token.hash(challenge))
                    .set(PASSKEY_CHALLENGE.MEMBER_ID, memberId)
                    .set(PASSKEY_CHALLENGE.NAME, name)
                    .set(PASSKEY_CHALLENGE.EXPIRES_AT, audit.now().plus(LIFE))
                    .execute();
        });
        return challenge;
    }

    /**
     * Uses a question up, also where its answer turns out to be wrong.
     *
     * @param memberId who was asked; null: whoever signs in
     * @return the name that came with it; empty where it was not asked, was answered, or its time is over
     */
    Optional<String> useUp(String challenge, @Nullable UUID memberId) {
        return database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            String hash = Token.hash(challenge);
            Optional<String> name = tx.select(PASSKEY_CHALLENGE.NAME)
                    .from(PASSKEY_CHALLENGE)
                    .where(
                            PASSKEY_CHALLENGE.CHALLENGE_HASH.eq(hash),
                            PASSKEY_CHALLENGE.EXPIRES_AT.gt(audit.now()),
                            memberId == null
                                    ? PASSKEY_CHALLENGE.MEMBER_ID.isNull()
                                    : PASSKEY_CHALLENGE.MEMBER_ID.eq(memberId))
                    .fetchOptional(PASSKEY_CHALLENGE.NAME);
            // of two at the same moment one deletes it
            int used = tx.deleteFrom(PASSKEY_CHALLENGE)
                    .where(PASSKEY_CHALLENGE.CHALLENGE_HASH.eq(hash))
                    .execute();
            return used == 1 ? name : Optional.empty();
        });
    }

    /** Adds a key that a device of the member has made. */
    Decision<UUID> add(UUID memberId, String name, PasskeyCheck.Key key) {
        return Decision.of(() -> {
            try {
                return database.sql().transactionResult(inside -> add(inside.dsl(), memberId, name, key));
            } catch (IntegrityConstraintViolationException takenByAnother) {
                throw Declined.refused(new PasskeyRefusal.NotAdded());
            }
        });
    }

    private UUID add(DSLContext tx, UUID memberId, String name, PasskeyCheck.Key key) {
        // holds the member, so that two devices at once are counted one after the other
        tx.select(MEMBER.ID)
                .from(MEMBER)
                .where(MEMBER.ID.eq(memberId))
                .forUpdate()
                .fetch();
        if (tx.fetchCount(PASSKEY, PASSKEY.MEMBER_ID.eq(memberId)) >= MOST) {
            throw Declined.refused(new PasskeyRefusal.Enough(MOST));
        }
        UUID id = UUID.randomUUID();
        tx.insertInto(PASSKEY)
                .set(PASSKEY.ID, id)
                .set(PASSKEY.MEMBER_ID, memberId)
                .set(PASSKEY.NAME, name)
                .set(PASSKEY.CREDENTIAL_ID, key.credential())
                .set(PASSKEY.CREDENTIAL_DATA, key.data())
                .set(PASSKEY.SIGN_COUNT, key.signCount())
                .set(PASSKEY.MADE_AT, audit.now())
                .execute();
        audit.write(tx, memberId, "add passkey", SUBJECT, id, name);
        return id;
    }

    /** A key with whose it is. */
    record Kept(UUID id, UUID memberId, PasskeyCheck.Key key) {}

    /** The key that a device names, of somebody who belongs to the group. */
    Optional<Kept> find(String credential) {
        return database.sql()
                .select(PASSKEY.ID, PASSKEY.MEMBER_ID, PASSKEY.CREDENTIAL_DATA, PASSKEY.SIGN_COUNT)
                .from(PASSKEY)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PASSKEY.MEMBER_ID))
                .where(PASSKEY.CREDENTIAL_ID.eq(credential), MEMBER.LEFT_AT.isNull())
                .fetchOptional(row -> new Kept(
                        row.value1(), row.value2(), new PasskeyCheck.Key(credential, row.value3(), row.value4())));
    }

    /** Signs in whoever holds a key: the token of their session; a no where it was ended or used elsewhere this moment. */
    Decision<String> open(Kept kept, long signCount) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int noted = tx.update(PASSKEY)
                    .set(PASSKEY.SIGN_COUNT, signCount)
                    .set(PASSKEY.LAST_USED_AT, audit.now())
                    .where(
                            PASSKEY.ID.eq(kept.id()),
                            PASSKEY.SIGN_COUNT.eq(kept.key().signCount()))
                    .execute();
            if (noted == 0) {
                throw Declined.refused(new PasskeyRefusal.NotProved());
            }
            return sessions.open(tx, kept.memberId());
        }));
    }

    /** A passkey that was ended, by its name, and the token of a new session, as all the member's others are over. */
    record Ended(String name, String session) {}

    /** Ends one of a member's own; whatever it had signed in is signed out. */
    Decision<Ended> end(UUID id, UUID memberId) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            String name = tx.select(PASSKEY.NAME)
                    .from(PASSKEY)
                    .where(PASSKEY.ID.eq(id), PASSKEY.MEMBER_ID.eq(memberId))
                    .forUpdate()
                    .fetchOptional(PASSKEY.NAME)
                    .orElseThrow(Declined::missing);
            tx.deleteFrom(PASSKEY).where(PASSKEY.ID.eq(id)).execute();
            audit.write(tx, memberId, "end passkey", SUBJECT, id, name);
            SessionStore.endAll(tx, memberId);
            return new Ended(name, sessions.open(tx, memberId));
        }));
    }
}
