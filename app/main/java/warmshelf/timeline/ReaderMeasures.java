package warmshelf.timeline;

import warmshelf.words.Units;

/** Writes measures in the units of the person who reads them. */
public record ReaderMeasures(Units units) implements Measures {
    @Override
    public String temperature(double celsius) {
        return units.temperature(celsius);
    }

    @Override
    public String temperatureRange(double lowC, double highC) {
        return units.temperatureRange(lowC, highC);
    }

    @Override
    public String length(double millimetres) {
        return units.length(millimetres);
    }
}
