package warmshelf.reminder;

import static warmshelf.db.generated.Tables.CALENDAR_ADDRESS;
import static warmshelf.db.generated.Tables.CALENDAR_EVENT;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.Token;

/** Keeps the secret addresses of calendars. Whoever knows one reads that part of that member's days and nothing else. */
public final class CalendarLinkStore {
    private final DSLContext sql;
    private final Audit audit;

    CalendarLinkStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** What an address opens. */
    record Opened(UUID member, CalendarPart part) {}

    /** Makes a member's address of a part anew, so that the one before ends; its token is shown this once. */
    String make(UUID member, CalendarPart part) {
        String token = Token.random();
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            // Held, so that two presses at once leave one address.
            tx.select(MEMBER.ID)
                    .from(MEMBER)
                    .where(MEMBER.ID.eq(member))
                    .forUpdate()
                    .fetch();
            tx.deleteFrom(CALENDAR_ADDRESS)
                    .where(CALENDAR_ADDRESS.MEMBER_ID.eq(member), CALENDAR_ADDRESS.PART.eq(part.word()))
                    .execute();
            tx.insertInto(CALENDAR_ADDRESS)
                    .set(CALENDAR_ADDRESS.MEMBER_ID, member)
                    .set(CALENDAR_ADDRESS.PART, part.word())
                    .set(CALENDAR_ADDRESS.TOKEN_HASH, Token.hash(token))
                    .set(CALENDAR_ADDRESS.MADE_AT, audit.now())
                    .execute();
            audit.write(tx, member, "make calendar address", "member", member, part.word());
        });
        return token;
    }

    void end(UUID member, CalendarPart part) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            if (tx.deleteFrom(CALENDAR_ADDRESS)
                            .where(CALENDAR_ADDRESS.MEMBER_ID.eq(member), CALENDAR_ADDRESS.PART.eq(part.word()))
                            .execute()
                    == 1) {
                audit.write(tx, member, "end calendar address", "member", member, part.word());
            }
        });
    }

    /** Ends, within the caller's transaction, every address of a member who leaves; it never works again. */
    public static void endAll(DSLContext tx, UUID member) {
        tx.deleteFrom(CALENDAR_ADDRESS)
                .where(CALENDAR_ADDRESS.MEMBER_ID.eq(member))
                .execute();
        tx.deleteFrom(CALENDAR_EVENT).where(CALENDAR_EVENT.MEMBER_ID.eq(member)).execute();
    }

    boolean has(UUID member, CalendarPart part) {
        return sql.fetchExists(
                CALENDAR_ADDRESS, CALENDAR_ADDRESS.MEMBER_ID.eq(member), CALENDAR_ADDRESS.PART.eq(part.word()));
    }

    /** Whose calendar an address opens; nobody's when it has ended or its member has left. */
    Optional<Opened> opened(String token) {
        return sql.select(CALENDAR_ADDRESS.MEMBER_ID, CALENDAR_ADDRESS.PART)
                .from(CALENDAR_ADDRESS)
                .join(MEMBER)
                .on(MEMBER.ID.eq(CALENDAR_ADDRESS.MEMBER_ID))
                .where(CALENDAR_ADDRESS.TOKEN_HASH.eq(Token.hash(token)), MEMBER.LEFT_AT.isNull())
                .fetchOptional(row -> new Opened(row.value1(), CalendarPart.named(row.value2())));
    }
}
