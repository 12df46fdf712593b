package warmshelf.reminder.push;

import static org.jooq.impl.DSL.coalesce;
import static org.jooq.impl.DSL.exists;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.selectOne;
import static org.jooq.impl.DSL.val;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/**
 * Keeps which devices show whose notices. A device is one sign-in: whoever signs out there, or signs in as somebody else, is
 * told nothing there any more. A sign-in is named by its form token, which pages know and which is the sign-in's alone.
 */
public final class PushAddressStore {
    public static final int MOST_DEVICES = 10;
    private static final Duration ENDED_SHOWN = Duration.ofDays(14);

    private final DSLContext sql;
    private final Audit audit;

    public PushAddressStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** Still told: not ended, its sign-in lasts, and its owner has not left. */
    static Condition isLive(OffsetDateTime now) {
        return PUSH_ADDRESS
                .ENDED_AT
                .isNull()
                .and(exists(selectOne()
                        .from(MEMBER_SESSION)
                        .join(MEMBER)
                        .on(MEMBER.ID.eq(MEMBER_SESSION.MEMBER_ID))
                        .where(
                                MEMBER_SESSION.TOKEN_HASH.eq(PUSH_ADDRESS.SESSION_HASH),
                                MEMBER_SESSION.MEMBER_ID.eq(PUSH_ADDRESS.MEMBER_ID),
                                MEMBER_SESSION.EXPIRES_AT.gt(now),
                                MEMBER.LEFT_AT.isNull())));
    }

    /** A member's devices, the newest first; what ended lately stays to be seen with its reason. */
    public List<PushAddress> of(UUID member, String formToken) {
        @Nullable String session = session(sql, member, formToken);
        OffsetDateTime now = audit.now();
        Condition live = isLive(now);
        return sql.select(PUSH_ADDRESS.asterisk())
                .select(field(live).as("live"))
                .from(PUSH_ADDRESS)
                .where(
                        PUSH_ADDRESS.MEMBER_ID.eq(member),
                        PUSH_ADDRESS.ENDED_AT.isNull().or(PUSH_ADDRESS.ENDED_AT.gt(now.minus(ENDED_SHOWN))))
                .orderBy(PUSH_ADDRESS.ADDED_AT.desc(), PUSH_ADDRESS.ID)
                .fetch(row -> address(row, session, now));
    }

    private static PushAddress address(Record row, @Nullable String session, OffsetDateTime now) {
        boolean live = Boolean.TRUE.equals(row.get("live", Boolean.class));
        @Nullable OffsetDateTime ended = row.get(PUSH_ADDRESS.ENDED_AT);
        @Nullable String why = row.get(PUSH_ADDRESS.ENDED_WHY);
        return new PushAddress(
                row.get(PUSH_ADDRESS.ID),
                row.get(PUSH_ADDRESS.NAME),
                row.get(PUSH_ADDRESS.ADDED_AT),
                row.get(PUSH_ADDRESS.LAST_TOLD_AT),
                live && row.get(PUSH_ADDRESS.SESSION_HASH).equals(session),
                live || ended != null ? ended : now,
                live ? "" : why == null ? "signed out" : why);
    }

    /**
     * Adds the device of a sign-in, or changes its address; whoever had the address before is told nothing there any more.
     *
     * @return false when the member has {@link #MOST_DEVICES} others
     */
    public boolean keep(UUID member, String formToken, PushTarget target, String name) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            String session = heldSession(tx, member, formToken);
            Optional<UUID> old = ofSession(tx, member, session);
            endOthersAt(tx, target, old.orElse(null), member);
            if (old.isPresent()) {
                rewrite(tx, old.get(), target, name);
            } else if (others(tx, member) >= MOST_DEVICES) {
                return false;
            } else {
                add(tx, member, session, target, name);
            }
            audit.write(tx, member, "add push device", "member", member, name);
            return true;
        });
    }

    /** The browser gave the device of this sign-in another address; false when no such device is told. */
    public boolean move(UUID member, String formToken, PushTarget target) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Optional<UUID> old = ofSession(tx, member, heldSession(tx, member, formToken));
            if (old.isEmpty()) {
                return false;
            }
            endOthersAt(tx, target, old.get(), member);
            rewrite(tx, old.get(), target, null);
            audit.write(tx, member, "move push device", "push address", old.get(), "");
            return true;
        });
    }

    /** Stops a device of a member's; false when there is none such. */
    public boolean stop(UUID member, UUID address) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            boolean theirs = tx.fetchExists(
                    PUSH_ADDRESS,
                    PUSH_ADDRESS.ID.eq(address),
                    PUSH_ADDRESS.MEMBER_ID.eq(member),
                    PUSH_ADDRESS.ENDED_AT.isNull());
            if (theirs) {
                end(tx, address, "stopped", member);
            }
            return theirs;
        });
    }

    /** The push service says that the device takes nothing any more, unless it has been given another address since. */
    void gone(UUID address, PushTarget target) {
        sql.transaction(inside -> {
            boolean same = inside.dsl()
                    .fetchExists(
                            PUSH_ADDRESS,
                            PUSH_ADDRESS.ID.eq(address),
                            PUSH_ADDRESS.ENDPOINT_HASH.eq(hash(target.endpoint())));
            if (same) {
                end(inside.dsl(), address, "gone", null);
            }
        });
    }

    /** Ends what can be told no more: those signed out and those who left. */
    public void endOver() {
        OffsetDateTime now = audit.now();
        var over = sql.select(PUSH_ADDRESS.ID, MEMBER.LEFT_AT)
                .from(PUSH_ADDRESS)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PUSH_ADDRESS.MEMBER_ID))
                .where(PUSH_ADDRESS.ENDED_AT.isNull(), isLive(now).not())
                .fetch();
        for (var row : over) {
            String why = row.value2() == null ? "signed out" : "left";
            sql.transaction(inside -> end(inside.dsl(), row.value1(), why, null));
        }
    }

    /** Where it led is forgotten: it would let anyone who read it try to send there. */
    private void end(DSLContext tx, UUID address, String why, @Nullable UUID by) {
        int ended = tx.update(PUSH_ADDRESS)
                .set(PUSH_ADDRESS.ENDED_AT, audit.now())
                .set(PUSH_ADDRESS.ENDED_WHY, why)
                .set(PUSH_ADDRESS.ENDPOINT, "")
                .set(PUSH_ADDRESS.ENDPOINT_HASH, hash(address.toString()))
                .set(PUSH_ADDRESS.P256DH, "")
                .set(PUSH_ADDRESS.AUTH, "")
                .where(PUSH_ADDRESS.ID.eq(address), PUSH_ADDRESS.ENDED_AT.isNull())
                .execute();
        if (ended == 1) {
            audit.write(tx, by, "end push device", "push address", address, why);
        }
    }

    private void endOthersAt(DSLContext tx, PushTarget target, @Nullable UUID but, UUID by) {
        tx
                .select(PUSH_ADDRESS.ID)
                .from(PUSH_ADDRESS)
                .where(PUSH_ADDRESS.ENDPOINT_HASH.eq(hash(target.endpoint())))
                .fetch(PUSH_ADDRESS.ID)
                .stream()
                .filter(id -> !id.equals(but))
                .forEach(id -> end(tx, id, "signed out", by));
    }

    private void add(DSLContext tx, UUID member, String session, PushTarget target, String name) {
        tx.insertInto(PUSH_ADDRESS)
                .set(PUSH_ADDRESS.ID, UUID.randomUUID())
                .set(PUSH_ADDRESS.MEMBER_ID, member)
                .set(PUSH_ADDRESS.ENDPOINT, target.endpoint())
                .set(PUSH_ADDRESS.ENDPOINT_HASH, hash(target.endpoint()))
                .set(PUSH_ADDRESS.P256DH, target.p256dh())
                .set(PUSH_ADDRESS.AUTH, target.auth())
                .set(PUSH_ADDRESS.NAME, name)
                .set(PUSH_ADDRESS.SESSION_HASH, session)
                .set(PUSH_ADDRESS.ADDED_BY, member)
                .set(PUSH_ADDRESS.ADDED_AT, audit.now())
                .execute();
    }

    private static void rewrite(DSLContext tx, UUID address, PushTarget target, @Nullable String name) {
        tx.update(PUSH_ADDRESS)
                .set(PUSH_ADDRESS.ENDPOINT, target.endpoint())
                .set(PUSH_ADDRESS.ENDPOINT_HASH, hash(target.endpoint()))
                .set(PUSH_ADDRESS.P256DH, target.p256dh())
                .set(PUSH_ADDRESS.AUTH, target.auth())
                .set(PUSH_ADDRESS.NAME, coalesce(val(name), PUSH_ADDRESS.NAME))
                .where(PUSH_ADDRESS.ID.eq(address))
                .execute();
    }

    private int others(DSLContext tx, UUID member) {
        return tx.fetchCount(PUSH_ADDRESS, PUSH_ADDRESS.MEMBER_ID.eq(member), isLive(audit.now()));
    }

    private static Optional<UUID> ofSession(DSLContext tx, UUID member, String session) {
        return tx
                .select(PUSH_ADDRESS.ID)
                .from(PUSH_ADDRESS)
                .where(
                        PUSH_ADDRESS.MEMBER_ID.eq(member),
                        PUSH_ADDRESS.SESSION_HASH.eq(session),
                        PUSH_ADDRESS.ENDED_AT.isNull())
                .fetch(PUSH_ADDRESS.ID)
                .stream()
                .findFirst();
    }

    /** The sign-in, after holding its member's row, so that two presses at once leave one device. */
    private static String heldSession(DSLContext tx, UUID member, String formToken) {
        tx.select(MEMBER.ID)
                .from(MEMBER)
                .where(MEMBER.ID.eq(member))
                .forUpdate()
                .fetch();
        @Nullable String session = session(tx, member, formToken);
        // signed out between the request's beginning and here: kept under no sign-in, it is ended at once
        return session == null ? "" : session;
    }

    private static @Nullable String session(DSLContext sql, UUID member, String formToken) {
        return sql.select(MEMBER_SESSION.TOKEN_HASH)
                .from(MEMBER_SESSION)
                .where(MEMBER_SESSION.MEMBER_ID.eq(member), MEMBER_SESSION.CSRF_TOKEN.eq(formToken))
                .fetchOne(MEMBER_SESSION.TOKEN_HASH);
    }

    static String hash(String endpoint) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(endpoint.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("every Java has SHA-256", absent);
        }
    }
}
