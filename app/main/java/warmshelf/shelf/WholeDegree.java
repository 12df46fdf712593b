package warmshelf.shelf;

/**
 * Set-points are kept to a tenth of a degree Celsius, so that every whole degree Fahrenheit comes back as it was typed. What seed
 * likes and what a thermostat holds is told by whole degrees Celsius.
 */
public final class WholeDegree {
    private WholeDegree() {}

    /** The whole degree Celsius that a set-point counts as: the nearest, from a half on the one above. */
    public static int of(double celsius) {
        return Math.toIntExact(Math.round(celsius));
    }
}
