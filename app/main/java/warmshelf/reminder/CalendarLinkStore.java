package warmshelf.reminder;

import static warmshelf.db.generated.Tables.CALENDAR_LINK;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.Token;

/** Keeps the secret addresses of calendars. Whoever knows one reads that member's days and nothing else. */
final class CalendarLinkStore {
    private final DSLContext sql;
    private final Audit audit;

    CalendarLinkStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** Makes a member's address anew, so that the one before ends; its token is shown this once. */
    String make(UUID member) {
        String token = Token.random();
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            // Held, so that two presses at once leave one address.
            tx.select(MEMBER.ID)
                    .from(MEMBER)
                    .where(MEMBER.ID.eq(member))
                    .forUpdate()
                    .fetch();
            tx.deleteFrom(CALENDAR_LINK)
                    .where(CALENDAR_LINK.MEMBER_ID.eq(member))
                    .execute();
            tx.insertInto(CALENDAR_LINK)
                    .set(CALENDAR_LINK.MEMBER_ID, member)
                    .set(CALENDAR_LINK.TOKEN_HASH, Token.hash(token))
                    .set(CALENDAR_LINK.MADE_AT, audit.now())
                    .execute();
            audit.write(tx, member, "make calendar address", "member", member, "");
        });
        return token;
    }

    void end(UUID member) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            if (tx.deleteFrom(CALENDAR_LINK)
                            .where(CALENDAR_LINK.MEMBER_ID.eq(member))
                            .execute()
                    == 1) {
                audit.write(tx, member, "end calendar address", "member", member, "");
            }
        });
    }

    boolean has(UUID member) {
        return sql.fetchExists(CALENDAR_LINK, CALENDAR_LINK.MEMBER_ID.eq(member));
    }

    /** Whose calendar an address opens; nobody's when it has ended or its member has left. */
    Optional<UUID> memberOf(String token) {
        return sql.select(CALENDAR_LINK.MEMBER_ID)
                .from(CALENDAR_LINK)
                .join(MEMBER)
                .on(MEMBER.ID.eq(CALENDAR_LINK.MEMBER_ID))
                .where(CALENDAR_LINK.TOKEN_HASH.eq(Token.hash(token)), MEMBER.LEFT_AT.isNull())
                .fetchOptional(CALENDAR_LINK.MEMBER_ID);
    }
}
