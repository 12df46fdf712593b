package warmshelf.sowing;

import warmshelf.timeline.Measures;
import warmshelf.web.Units;

/** Writes the advice's measures in the units of the person who reads it. */
record ReaderMeasures(Units units) implements Measures {
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
