package warmshelf.timeline;

import warmshelf.frost.FirstFrost;
import warmshelf.frost.Threshold;

/**
 * When one autumn's first frosts come.
 *
 * @param frost the first night of 0 °C
 * @param killing the first night of -2.2 °C
 */
public record AutumnFrosts(FirstFrost frost, FirstFrost killing) {

    /**
     * The first night of so many degrees Celsius. Autumn is taken to cool evenly: each degree below comes as many days after
     * the last as those between 0 and -2.2 °C.
     */
    FirstFrost at(double celsius) {
        if (celsius >= 0) {
            return frost;
        }
        double steps = celsius / Threshold.KILLING.celsius() - 1;
        return steps == 0 ? killing : killing.laterBy(steps * apart());
    }

    private double apart() {
        return killing.season().medianDay() - frost.season().medianDay();
    }

    /** Days from the first night of 0 °C to the first of so many degrees Celsius. */
    double daysTo(double celsius) {
        return celsius >= 0 ? 0 : celsius / Threshold.KILLING.celsius() * apart();
    }
}
