package warmshelf.finding.statistics;

import java.util.List;

/**
 * One of the ways that are compared.
 *
 * @param name such as bag, or 24 °C; the same name in several blocks is the same way
 * @param times one for each seed sown, at least one
 */
public record Arm(String name, List<SproutingTime> times) {
    public Arm {
        times = List.copyOf(times);
        if (times.isEmpty()) {
            throw new IllegalArgumentException("the way " + name + " has no seed");
        }
    }

    /** How many of its seeds sprouted. */
    public ObservedShare sprouted() {
        return new ObservedShare(
                (int) times.stream().filter(SproutingTime::sprouted).count(), times.size());
    }

    /** The share sprouted by each day. */
    public GerminationCurve curve() {
        return GerminationCurve.of(times);
    }
}
