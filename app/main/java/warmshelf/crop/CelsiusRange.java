package warmshelf.crop;

/** A closed range of temperatures in degrees Celsius. */
public record CelsiusRange(double low, double high) {
    public CelsiusRange {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a range needs its low end first, was " + low + " to " + high);
        }
    }

    public boolean contains(double celsius) {
        return low <= celsius && celsius <= high;
    }

    public boolean overlaps(CelsiusRange other) {
        return low <= other.high && other.low <= high;
    }
}
