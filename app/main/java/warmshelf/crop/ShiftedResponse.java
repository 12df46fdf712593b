package warmshelf.crop;

import java.util.List;
import java.util.Optional;

/**
 * A published response whose days are all longer or shorter by one factor, as a group's own sowings showed. What suits the
 * seed stays as published: the factor is the same at every temperature.
 */
public record ShiftedResponse(TemperatureResponse published, double factor) implements TemperatureResponse {
    /** The response with its days multiplied; itself where the factor is 1. */
    public static TemperatureResponse of(TemperatureResponse published, double factor) {
        return factor == 1 ? published : new ShiftedResponse(published, factor);
    }

    @Override
    public Optional<Emergence> at(double celsius) {
        return published.at(celsius).map(this::shifted);
    }

    @Override
    public Prospect prospect(double celsius) {
        Prospect there = published.prospect(celsius);
        return there instanceof Prospect.Timed timed ? new Prospect.Timed(shifted(timed.days()), timed.basis()) : there;
    }

    private Emergence shifted(Emergence table) {
        return new Emergence(
                factor * table.days(), factor * table.days5(), factor * table.days95(), table.normalShare());
    }

    @Override
    public CelsiusRange timed() {
        return published.timed();
    }

    @Override
    public double bestC() {
        return published.bestC();
    }

    @Override
    public CelsiusRange comfortable() {
        return published.comfortable();
    }

    @Override
    public CelsiusRange possible() {
        return published.possible();
    }

    @Override
    public List<EmergenceDisagreement> disagreements() {
        return published.disagreements();
    }

    @Override
    public String source() {
        return published.source();
    }
}
