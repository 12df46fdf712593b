package warmshelf.crop;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A response known only as the trade states it: so many to so many days at such temperatures. The two ends are read as the
 * days of the first and of the last twentieth, the middle as their geometric mean (log-normal). No dependence on
 * temperature is claimed within the stated temperatures and nothing outside them; the best is their middle.
 *
 * @param isSaidByTheGroup whether a coordinator wrote it of a crop of the group's own
 */
record StatedRangeResponse(
        double daysMin, double daysMax, CelsiusRange possible, String source, boolean isSaidByTheGroup)
        implements TemperatureResponse {
    @Override
    public Optional<Emergence> at(double celsius) {
        if (!possible.contains(celsius)) {
            return Optional.empty();
        }
        return Optional.of(new Emergence(Math.sqrt(daysMin * daysMax), daysMin, daysMax, OptionalDouble.empty()));
    }

    @Override
    public double bestC() {
        return (possible.low() + possible.high()) / 2;
    }

    @Override
    public CelsiusRange comfortable() {
        return possible;
    }
}
