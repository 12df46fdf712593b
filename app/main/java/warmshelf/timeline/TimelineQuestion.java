package warmshelf.timeline;

import java.time.LocalDate;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.crop.TemperatureResponse;
import warmshelf.words.Units;

/**
 * What is to be planned.
 *
 * @param warm whether it lies on a mat
 * @param matC the temperature it lies at, in degrees Celsius: the mat's set-point, or the room where it is not warm
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
        Units units) {}
