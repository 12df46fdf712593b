package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;

/**
 * A mat whose last reading was too far from its set-point.
 *
 * @param reading the entry that holds the reading
 * @param where for example 'Hall cellar · North · shelf 2'
 * @param readC what the thermometer showed, in degrees Celsius
 * @param setPointC what the mat stood at on that day
 * @param by who read it
 * @param concerned members with something on the mat today
 */
public record MatAlarm(
        UUID reading,
        UUID mat,
        UUID site,
        String name,
        String where,
        double readC,
        double setPointC,
        LocalDate readOn,
        String by,
        Set<UUID> concerned) {
    /**
     * Degrees either way that are still well. Common practice: hobby thermostats hold to within one or two degrees, and the
     * band for warm-season seed, 24 to 27 °C, is three degrees wide.
     */
    public static final double BEARABLE_C = 2;

    /** Whether a reading is too far off, either way. */
    public static boolean isOff(double readC, double setPointC) {
        return Math.abs(readC - setPointC) > BEARABLE_C;
    }

    public boolean isHot() {
        return readC > setPointC;
    }

    /** What usually helps. */
    public String advice() {
        return isHot() ? SAY.tooHot() : SAY.tooCold();
    }
}
