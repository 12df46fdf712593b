package warmshelf.shelf;

import warmshelf.words.Units;

/**
 * The set-points that a mat can hold, both ends included.
 *
 * @param lowC in degrees Celsius to a tenth, as is the other end
 */
public record Thermostat(double lowC, double highC) {

    /** Whether a set-point counts as a degree from the lowest to the highest. */
    public boolean contains(double celsius) {
        return lowest() <= WholeDegree.of(celsius) && WholeDegree.of(celsius) <= highest();
    }

    /** The lowest whole degree Celsius. */
    public int lowest() {
        return WholeDegree.of(lowC);
    }

    /** The highest whole degree Celsius. */
    public int highest() {
        return WholeDegree.of(highC);
    }

    /** In a reader's units: '18–35 °C', or '64–95 °F'. */
    public String words(Units units) {
        return units.temperatureRange(lowC, highC);
    }
}
