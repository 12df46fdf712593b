package warmshelf.crop;

import java.util.List;
import java.util.Optional;

/** Another crop's answer to warmth, taken for this one on a coordinator's word. */
record BorrowedResponse(TemperatureResponse of, String source) implements TemperatureResponse {
    @Override
    public Optional<Emergence> at(double celsius) {
        return of.at(celsius);
    }

    @Override
    public Prospect prospect(double celsius) {
        return of.prospect(celsius);
    }

    @Override
    public CelsiusRange timed() {
        return of.timed();
    }

    @Override
    public double bestC() {
        return of.bestC();
    }

    @Override
    public CelsiusRange comfortable() {
        return of.comfortable();
    }

    @Override
    public List<EmergenceDisagreement> disagreements() {
        return of.disagreements();
    }

    @Override
    public CelsiusRange possible() {
        return of.possible();
    }
}
