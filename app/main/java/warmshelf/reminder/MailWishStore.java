package warmshelf.reminder;

import static warmshelf.db.generated.Tables.MAIL_WISH;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps who wants to be written to, where and when. */
final class MailWishStore {
    private final DSLContext sql;
    private final Audit audit;

    MailWishStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A member who wants letters. */
    record Reader(UUID id, String name, boolean coordinator, MailWish wish) {}

    Optional<MailWish> of(UUID member) {
        return sql.selectFrom(MAIL_WISH).where(MAIL_WISH.MEMBER_ID.eq(member)).fetchOptional(MailWishStore::wish);
    }

    /** Everyone who wants any letter and has not left. */
    List<Reader> readers() {
        return sql.select(MAIL_WISH.asterisk(), MEMBER.CALLED, MEMBER.ROLE)
                .from(MAIL_WISH)
                .join(MEMBER)
                .on(MEMBER.ID.eq(MAIL_WISH.MEMBER_ID))
                .where(MEMBER.LEFT_AT.isNull())
                .orderBy(MEMBER.NAME_KEY)
                .fetch(row -> new Reader(
                        row.get(MAIL_WISH.MEMBER_ID),
                        row.get(MEMBER.CALLED),
                        row.get(MEMBER.ROLE).equals("coordinator"),
                        wish(row)));
    }

    private static MailWish wish(Record row) {
        return new MailWish(
                row.get(MAIL_WISH.ADDRESS),
                row.get(MAIL_WISH.IN_THE_MORNING),
                row.get(MAIL_WISH.IN_THE_EVENING),
                row.get(MAIL_WISH.OF_ALARMS),
                row.get(MAIL_WISH.OF_STAND_INS));
    }

    /** Keeps a wish in the place of the one before; one for nothing is forgotten, address and all. */
    void keep(UUID member, MailWish wish) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            // Held, so that two presses at once leave one wish.
            tx.select(MEMBER.ID)
                    .from(MEMBER)
                    .where(MEMBER.ID.eq(member))
                    .forUpdate()
                    .fetch();
            tx.deleteFrom(MAIL_WISH).where(MAIL_WISH.MEMBER_ID.eq(member)).execute();
            if (!wish.equals(MailWish.NONE)) {
                tx.insertInto(MAIL_WISH)
                        .set(MAIL_WISH.MEMBER_ID, member)
                        .set(MAIL_WISH.ADDRESS, wish.address())
                        .set(MAIL_WISH.IN_THE_MORNING, wish.inTheMorning())
                        .set(MAIL_WISH.IN_THE_EVENING, wish.inTheEvening())
                        .set(MAIL_WISH.OF_ALARMS, wish.ofAlarms())
                        .set(MAIL_WISH.OF_STAND_INS, wish.ofStandIns())
                        .set(MAIL_WISH.CHANGED_AT, audit.now())
                        .execute();
            }
            audit.write(tx, member, "change letters", "member", member, "");
        });
    }
}
