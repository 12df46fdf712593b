package warmshelf.allocation;

import warmshelf.crop.CelsiusRange;
import warmshelf.shelf.WholeDegree;
import warmshelf.words.Units;

/** The whole degrees Celsius that suit something lying on a mat, both ends included; a set-point suits as the degree it counts as. */
public record Band(int lowC, int highC) {
    public Band {
        if (lowC > highC) {
            throw new IllegalArgumentException("a band needs its low end first, was " + lowC + " to " + highC);
        }
    }

    /** The whole degrees within a range; where it holds none, the one nearest to its middle. */
    public static Band within(CelsiusRange range) {
        int low = (int) Math.ceil(range.low());
        int high = (int) Math.floor(range.high());
        if (low <= high) {
            return new Band(low, high);
        }
        int middle = (int) Math.round((range.low() + range.high()) / 2);
        return new Band(middle, middle);
    }

    public boolean contains(double celsius) {
        int degree = WholeDegree.of(celsius);
        return lowC <= degree && degree <= highC;
    }

    public boolean overlaps(Band other) {
        return lowC <= other.highC && other.lowC <= highC;
    }

    /** The set-point itself where it suits, else the nearer end. */
    public double nearestTo(double celsius) {
        return contains(celsius) ? celsius : nearestDegree(WholeDegree.of(celsius));
    }

    /** The degree in the middle, the lower of two. */
    public int middle() {
        return Math.floorDiv(lowC + highC, 2);
    }

    /** The degree of this band nearest to the one given. */
    public int nearestDegree(int celsius) {
        return Math.max(lowC, Math.min(highC, celsius));
    }

    /** In a reader's units: '24–30 °C', or '75–86 °F'. */
    public String words(Units units) {
        return units.temperatureRange(lowC, highC);
    }
}
