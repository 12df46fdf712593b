package warmshelf.crop;

import java.util.Optional;

/** A crop raised from slips: it takes room on a mat, but no seed will ever come up, at any temperature. */
record SlipsResponse(CelsiusRange comfortable, CelsiusRange possible, String source) implements TemperatureResponse {
    @Override
    public Optional<Emergence> at(double celsius) {
        return Optional.empty();
    }

    @Override
    public double bestC() {
        return (comfortable.low() + comfortable.high()) / 2;
    }
}
