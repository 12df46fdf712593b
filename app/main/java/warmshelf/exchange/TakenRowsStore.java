package warmshelf.exchange;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;

import org.jooq.Condition;
import org.jooq.impl.DSL;

/** Which rows somebody may take out, as a table or by a script of theirs. */
public final class TakenRowsStore {
    private TakenRowsStore() {}

    /** Their sowings. */
    public static Condition sowings(Taker taker) {
        return taker.everything() ? DSL.noCondition() : SOWING.MEMBER_ID.eq(taker.memberId());
    }

    /** Their lots and the group's. */
    public static Condition lots(Taker taker) {
        return taker.everything() ? DSL.noCondition() : LOT.OWNER_ID.isNull().or(LOT.OWNER_ID.eq(taker.memberId()));
    }
}
