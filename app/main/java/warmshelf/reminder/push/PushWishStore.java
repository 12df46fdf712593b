package warmshelf.reminder.push;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_WISH;

import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps what members want to be told on their devices. */
public final class PushWishStore {
    private final DSLContext sql;
    private final Audit audit;

    public PushWishStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A member with a device. */
    public record Owner(UUID id, String name, boolean coordinator, PushWish wish) {}

    public PushWish of(UUID member) {
        return sql.selectFrom(PUSH_WISH)
                .where(PUSH_WISH.MEMBER_ID.eq(member))
                .fetchOptional(PushWishStore::wish)
                .orElse(PushWish.EVERYTHING);
    }

    /** Everyone with a device that is told. */
    public List<Owner> owners() {
        return sql.select(MEMBER.ID, MEMBER.CALLED, MEMBER.ROLE)
                .select(PUSH_WISH.fields())
                .from(MEMBER)
                .leftJoin(PUSH_WISH)
                .on(PUSH_WISH.MEMBER_ID.eq(MEMBER.ID))
                .where(MEMBER.ID.in(DSL.select(PUSH_ADDRESS.MEMBER_ID)
                        .from(PUSH_ADDRESS)
                        .where(PushAddressStore.isLive(audit.now()))))
                .orderBy(MEMBER.NAME_KEY)
                .fetch(row -> new Owner(
                        row.get(MEMBER.ID),
                        row.get(MEMBER.CALLED),
                        row.get(MEMBER.ROLE).equals("coordinator"),
                        row.get(PUSH_WISH.MEMBER_ID) == null ? PushWish.EVERYTHING : wish(row)));
    }

    private static PushWish wish(Record row) {
        return new PushWish(
                row.get(PUSH_WISH.IN_THE_MORNING),
                row.get(PUSH_WISH.IN_THE_EVENING),
                row.get(PUSH_WISH.OF_ALARMS),
                row.get(PUSH_WISH.OF_STAND_INS));
    }

    /** Keeps a wish in the place of the one before. */
    public void keep(UUID member, PushWish wish) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            // Held, so that two presses at once leave one wish.
            tx.select(MEMBER.ID)
                    .from(MEMBER)
                    .where(MEMBER.ID.eq(member))
                    .forUpdate()
                    .fetch();
            tx.deleteFrom(PUSH_WISH).where(PUSH_WISH.MEMBER_ID.eq(member)).execute();
            tx.insertInto(PUSH_WISH)
                    .set(PUSH_WISH.MEMBER_ID, member)
                    .set(PUSH_WISH.IN_THE_MORNING, wish.inTheMorning())
                    .set(PUSH_WISH.IN_THE_EVENING, wish.inTheEvening())
                    .set(PUSH_WISH.OF_ALARMS, wish.ofAlarms())
                    .set(PUSH_WISH.OF_STAND_INS, wish.ofStandIns())
                    .set(PUSH_WISH.CHANGED_AT, audit.now())
                    .execute();
            audit.write(tx, member, "change push wish", "member", member, "");
        });
    }
}
