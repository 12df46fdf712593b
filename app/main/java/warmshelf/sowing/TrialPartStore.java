package warmshelf.sowing;

import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_BLOCK;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.db.generated.Tables.TRIAL_WAY;

import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;

/** Reads what sowings are of side-by-side trials. */
final class TrialPartStore {
    private TrialPartStore() {}

    /** What each sowing of some trials is of them, by the sowing's id. */
    static Map<UUID, TrialPart> of(DSLContext from, Collection<UUID> trials) {
        return trials.isEmpty()
                ? Map.of()
                : from.select(
                                TRIAL_SOWING.SOWING_ID,
                                TRIAL_SOWING.TRIAL_ID,
                                TRIAL.NUMBER,
                                TRIAL_SOWING.BLOCK,
                                TRIAL_SOWING.LETTER,
                                TRIAL_WAY.SOAKED,
                                TRIAL_BLOCK.SOW_ON)
                        .from(TRIAL_SOWING)
                        .join(TRIAL)
                        .on(TRIAL.ID.eq(TRIAL_SOWING.TRIAL_ID))
                        .join(TRIAL_WAY)
                        .on(TRIAL_WAY.TRIAL_ID.eq(TRIAL_SOWING.TRIAL_ID), TRIAL_WAY.LETTER.eq(TRIAL_SOWING.LETTER))
                        .join(TRIAL_BLOCK)
                        .on(TRIAL_BLOCK.TRIAL_ID.eq(TRIAL_SOWING.TRIAL_ID), TRIAL_BLOCK.NUMBER.eq(TRIAL_SOWING.BLOCK))
                        .where(TRIAL_SOWING.TRIAL_ID.in(trials))
                        .fetchMap(
                                TRIAL_SOWING.SOWING_ID,
                                row -> new TrialPart(
                                        row.get(TRIAL_SOWING.TRIAL_ID),
                                        row.get(TRIAL.NUMBER),
                                        row.get(TRIAL_SOWING.BLOCK),
                                        row.get(TRIAL_SOWING.LETTER),
                                        row.get(TRIAL_WAY.SOAKED),
                                        row.get(TRIAL_BLOCK.SOW_ON)));
    }
}
