package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.crop.TemperatureResponse;
import warmshelf.words.Units;

/**
 * What is to be planned.
 *
 * @param warm whether it lies on a mat
 * @param matC the temperature it lies at, in degrees Celsius: the mat's set-point, or the room where it is not warm
 * @param soaks whether the seed is soaked, where that was decided; null: as is advised
 * @param seedsToACell how many are sown into a cell or pot; of more than one a single plant is kept
 * @param units in which the reasons and notes are written
 */
public record TimelineQuestion(
        Crop crop,
        TemperatureResponse response,
        Method method,
        PlantingOut plantingOut,
        boolean warm,
        double matC,
        LocalDate today,
        Seen seen,
        @Nullable Boolean soaks,
        int seedsToACell,
        Units units) {

    /** One seed to a cell, soaked as is advised. */
    public TimelineQuestion(
            Crop crop,
            TemperatureResponse response,
            Method method,
            PlantingOut plantingOut,
            boolean warm,
            double matC,
            LocalDate today,
            Seen seen,
            Units units) {
        this(crop, response, method, plantingOut, warm, matC, today, seen, null, 1, units);
    }
}
