package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The frosts around one growing season in one garden.
 *
 * @param lastSpringAverage day after which half the springs still have a frost; null: there is none to fear
 * @param lastSpringAtRisk day after which only the accepted share of springs still has a frost; null: none to fear
 * @param firstAutumnAtRisk day before which only the accepted share of autumns already had a frost; null: none to fear, or
 *     not known
 */
public record FrostDates(
        @Nullable LocalDate lastSpringAverage,
        @Nullable LocalDate lastSpringAtRisk,
        @Nullable LocalDate firstAutumnAtRisk) {

    /** One date each, as a person knows them by heart. */
    public static FrostDates of(LocalDate lastSpring, @Nullable LocalDate firstAutumn) {
        return new FrostDates(lastSpring, lastSpring, firstAutumn);
    }

    /** Whether the autumn's frosts begin before the spring's have ended, so that nothing tender can stand outdoors. */
    boolean neverFrostFree() {
        LocalDate lastSpring = lastSpring();
        return lastSpring != null && firstAutumnAtRisk != null && !firstAutumnAtRisk.isAfter(lastSpring);
    }

    private @Nullable LocalDate lastSpring() {
        return lastSpringAtRisk != null ? lastSpringAtRisk : lastSpringAverage;
    }
}
