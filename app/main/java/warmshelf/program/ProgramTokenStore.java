package warmshelf.program;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.group.Token;

/** Keeps the tokens of members' scripts, each as a hash, so that a copy of the database opens nothing. */
public final class ProgramTokenStore {
    /** By this, people and programs that look for secrets in the wrong place know one. */
    static final String PREFIX = "warmshelf_";

    static final int MOST_OF_A_MEMBER = 20;
    private static final String SUBJECT = "program_token";

    private final DSLContext sql;
    private final Audit audit;

    public ProgramTokenStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** Makes a token and returns it, which is shown this once and kept nowhere. */
    Decision<String> make(UUID member, NewToken token) {
        return Decision.of(() -> sql.transactionResult(inside -> make(inside.dsl(), member, token)));
    }

    private String make(DSLContext tx, UUID member, NewToken token) {
        // Held, so that two presses at once do not go beyond the most.
        tx.select(MEMBER.ID)
                .from(MEMBER)
                .where(MEMBER.ID.eq(member))
                .forUpdate()
                .fetch();
        if (tx.fetchCount(PROGRAM_TOKEN, open().and(PROGRAM_TOKEN.MEMBER_ID.eq(member))) >= MOST_OF_A_MEMBER) {
            throw Declined.refused(new ProgramRefusal.TooManyTokens(MOST_OF_A_MEMBER));
        }
        String secret = PREFIX + Token.random();
        UUID id = UUID.randomUUID();
        String scopes = TokenScope.stored(token.scopes());
        tx.insertInto(PROGRAM_TOKEN)
                .set(PROGRAM_TOKEN.ID, id)
                .set(PROGRAM_TOKEN.MEMBER_ID, member)
                .set(PROGRAM_TOKEN.NAME, token.name())
                .set(PROGRAM_TOKEN.TOKEN_HASH, Token.hash(secret))
                .set(PROGRAM_TOKEN.SCOPES, scopes)
                .set(PROGRAM_TOKEN.MADE_AT, audit.now())
                .set(PROGRAM_TOKEN.ENDS_ON, token.endsOn())
                .execute();
        audit.write(tx, member, "make token", SUBJECT, id, token.name() + ": " + scopes);
        return secret;
    }

    /** A member's tokens that were not revoked, the newest first. */
    List<ProgramToken> of(UUID member, ZoneId zone) {
        return tokens(PROGRAM_TOKEN.MEMBER_ID.eq(member), zone);
    }

    /** Everybody else's. */
    List<ProgramToken> ofOthers(UUID member, ZoneId zone) {
        return tokens(PROGRAM_TOKEN.MEMBER_ID.ne(member), zone);
    }

    private List<ProgramToken> tokens(Condition whose, ZoneId zone) {
        return sql.select(PROGRAM_TOKEN.asterisk(), MEMBER.CALLED)
                .from(PROGRAM_TOKEN)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PROGRAM_TOKEN.MEMBER_ID))
                .where(open(), whose)
                .orderBy(PROGRAM_TOKEN.MADE_AT.desc(), PROGRAM_TOKEN.ID)
                .fetch(row -> token(row, zone));
    }

    private static ProgramToken token(Record row, ZoneId zone) {
        return new ProgramToken(
                row.get(PROGRAM_TOKEN.ID),
                row.get(PROGRAM_TOKEN.NAME),
                row.get(MEMBER.CALLED),
                List.copyOf(TokenScope.parse(row.get(PROGRAM_TOKEN.SCOPES))),
                day(row.get(PROGRAM_TOKEN.MADE_AT), zone),
                row.get(PROGRAM_TOKEN.ENDS_ON),
                row.get(PROGRAM_TOKEN.LAST_USED_ON));
    }

    /**
     * Ends a token for good: one's own, or as a coordinator anybody's.
     *
     * @return its name; empty when there is none to end
     */
    Optional<String> revoke(UUID id, UUID by, boolean coordinator) {
        Condition whose = open().and(PROGRAM_TOKEN.ID.eq(id))
                .and(coordinator ? PROGRAM_TOKEN.ID.isNotNull() : PROGRAM_TOKEN.MEMBER_ID.eq(by));
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Optional<String> name =
                    tx.selectFrom(PROGRAM_TOKEN).where(whose).forUpdate().fetchOptional(PROGRAM_TOKEN.NAME);
            name.ifPresent(known -> {
                end(tx, PROGRAM_TOKEN.ID.eq(id), by, audit.now());
                audit.write(tx, by, "revoke token", SUBJECT, id, known);
            });
            return name;
        });
    }

    /** Ends, within the caller's transaction, every token of a member who leaves; none works again when they come back. */
    public static void endAll(DSLContext tx, UUID member, UUID by, OffsetDateTime now) {
        end(tx, open().and(PROGRAM_TOKEN.MEMBER_ID.eq(member)), by, now);
    }

    private static void end(DSLContext tx, Condition which, UUID by, OffsetDateTime now) {
        tx.update(PROGRAM_TOKEN)
                .set(PROGRAM_TOKEN.REVOKED_BY, by)
                .set(PROGRAM_TOKEN.REVOKED_AT, now)
                .where(which)
                .execute();
    }

    private static Condition open() {
        return PROGRAM_TOKEN.REVOKED_AT.isNull();
    }

    /** Whose script comes in by a token; Gone when it lets nobody in any more, Missing when there never was one. */
    Decision<ProgramCaller> caller(String secret) {
        Record row = sql.select(PROGRAM_TOKEN.asterisk())
                .select(MEMBER.ROLE, MEMBER.LEFT_AT)
                .select(GROUP_PROFILE.NAME, GROUP_PROFILE.SEASON, GROUP_PROFILE.TIME_ZONE)
                .from(PROGRAM_TOKEN)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PROGRAM_TOKEN.MEMBER_ID))
                .crossJoin(GROUP_PROFILE)
                .where(PROGRAM_TOKEN.TOKEN_HASH.eq(Token.hash(secret)))
                .fetchOne();
        return row == null ? new Decision.Missing<>() : caller(row);
    }

    private Decision<ProgramCaller> caller(Record row) {
        ZoneId zone = ZoneId.of(row.get(GROUP_PROFILE.TIME_ZONE));
        LocalDate today = day(audit.now(), zone);
        @Nullable LocalDate endsOn = row.get(PROGRAM_TOKEN.ENDS_ON);
        if (row.get(MEMBER.LEFT_AT) != null) {
            return new Decision.Gone<>(new ProgramRefusal.OwnerLeft());
        }
        if (row.get(PROGRAM_TOKEN.REVOKED_AT) != null) {
            return new Decision.Gone<>(new ProgramRefusal.Revoked());
        }
        if (endsOn != null && ProgramToken.hasEnded(endsOn, today)) {
            return new Decision.Gone<>(new ProgramRefusal.Ended(endsOn));
        }
        return new Decision.Done<>(new ProgramCaller(
                row.get(PROGRAM_TOKEN.ID),
                row.get(PROGRAM_TOKEN.NAME),
                TokenScope.parse(row.get(PROGRAM_TOKEN.SCOPES)),
                row.get(PROGRAM_TOKEN.MEMBER_ID),
                row.get(MEMBER.ROLE).equals("coordinator"),
                row.get(GROUP_PROFILE.NAME),
                row.get(GROUP_PROFILE.SEASON),
                zone,
                today));
    }

    /** Notes that a token was used; once a day, which spares a write for each request. */
    void noteUse(UUID id, LocalDate today) {
        boolean noted =
                sql.fetchExists(PROGRAM_TOKEN, PROGRAM_TOKEN.ID.eq(id).and(PROGRAM_TOKEN.LAST_USED_ON.ge(today)));
        if (!noted) {
            sql.update(PROGRAM_TOKEN)
                    .set(PROGRAM_TOKEN.LAST_USED_ON, today)
                    .where(PROGRAM_TOKEN.ID.eq(id))
                    .execute();
        }
    }

    private static LocalDate day(OffsetDateTime moment, ZoneId zone) {
        return moment.atZoneSameInstant(zone).toLocalDate();
    }
}
