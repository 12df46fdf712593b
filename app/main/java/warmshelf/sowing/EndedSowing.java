package warmshelf.sowing;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A sowing that went out or was given up, with what came of it.
 *
 * @param sownOn the day it was sown
 * @param up seedlings that were up; 0: nobody counted, or none was
 * @param lived of those until they went out; of what was given up none did
 * @param plantedOutOn null: it was given up before
 * @param meanC the mean set-point of the mats it lay on; null: it lay on none
 */
public record EndedSowing(
        Sowing sowing,
        LocalDate sownOn,
        int up,
        int lived,
        @Nullable LocalDate plantedOutOn,
        @Nullable Double meanC) {

    public boolean isGivenUp() {
        return sowing.stage() == SowingStage.GIVEN_UP;
    }
}
