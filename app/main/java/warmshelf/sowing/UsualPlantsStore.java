package warmshelf.sowing;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;

import java.util.List;
import org.jooq.DSLContext;
import warmshelf.db.Database;

/** How many plants of a crop this group usually asks for. */
final class UsualPlantsStore {
    /** Where nobody has asked for the crop yet: a household's row, our judgement. */
    static final int WHERE_NOBODY_ASKED = 6;

    private final DSLContext sql;

    UsualPlantsStore(Database database) {
        this.sql = database.sql();
    }

    /** The middle of all that was asked for. */
    int of(String cropId) {
        List<Integer> asked = sql.select(SOWING.PLANTS_WANTED)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .where(LOT.CROP_ID.eq(cropId))
                .orderBy(SOWING.PLANTS_WANTED)
                .fetch(SOWING.PLANTS_WANTED);
        return asked.isEmpty() ? WHERE_NOBODY_ASKED : asked.get(asked.size() / 2);
    }
}
