package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.sowing.Container;
import warmshelf.words.Units;

/**
 * One of the ways that a trial compares.
 *
 * @param letter A, B or C: what labels and the round call it
 * @param warm whether it lies on a mat; else in a room
 * @param celsius the set-point that it asks for; null: any that suits the crop
 * @param soaked whether its seed is soaked the evening before
 */
public record TrialWay(
        String letter,
        Method method,
        boolean warm,
        @Nullable Integer celsius,
        boolean soaked) {
    /** Seeds for which half a tray of the usual 72 cells does. */
    private static final int HALF_TRAY_CELLS = 36;

    /** What it is called in sentences, such as 'the bag' or '24 °C'. */
    public String name(TrialKind kind, Units units) {
        return switch (kind) {
            case METHOD -> method == Method.BAG ? SAY.bag() : SAY.tray();
            case HEAT -> warm ? SAY.mat() : SAY.room();
            case WARMTH -> celsius == null ? SAY.mat() : units.temperature(celsius);
            case SOAK -> soaked ? SAY.soaked() : SAY.dry();
        };
    }

    /** What so many seeds of it lie in, each with room of its own. */
    Container container(int seeds) {
        if (method == Method.BAG) {
            return Container.BAG;
        }
        return seeds <= HALF_TRAY_CELLS ? Container.HALF_TRAY : Container.TRAY;
    }
}
