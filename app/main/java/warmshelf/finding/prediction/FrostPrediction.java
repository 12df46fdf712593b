package warmshelf.finding.prediction;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;

/**
 * The frost that ended a spring or opened an autumn where a thermometer hangs, as all other evidence told it, and as the thermometer
 * showed it.
 *
 * @param year by which the spring or autumn is named
 * @param threshold at or below which a night counts
 * @param told without this thermometer's own nights
 * @param seen the day of that frost; null: there was none
 */
record FrostPrediction(
        String thermometer,
        int year,
        Side side,
        Threshold threshold,
        FrostClimate told,
        @Nullable LocalDate seen) {

    /** The day after which (spring) or before which (autumn) frost was told with that chance; empty where it was always less likely. */
    Optional<LocalDate> day(double chance) {
        return side == Side.SPRING ? told.lastSpringFrost(chance, year) : told.firstAutumnFrost(chance, year);
    }

    /** Whether frost came after (spring) or before (autumn) a day. */
    boolean cameBeyond(LocalDate day) {
        return seen != null && (side == Side.SPRING ? seen.isAfter(day) : seen.isBefore(day));
    }
}
