package warmshelf.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import warmshelf.shelf.WholeDegree;

/**
 * How warm something lies on a mat day by day: as the mat is set, and on days on which nothing is set as is asked. A mat is set
 * on the days on which something else lies there, and where a coordinator has set it; on an empty mat that counts only where
 * it suits, because an empty mat may be turned.
 */
public final class StayWarmth {
    /** Rates are added up, and a sum of n times 1/n may fall short of 1 by a rounding error. */
    private static final double DONE = 1 - 1e-9;

    private final SpaceCalendar board;
    private final MatSpace mat;
    private final Band band;

    public StayWarmth(SpaceCalendar board, MatSpace mat, Band band) {
        this.board = board;
        this.mat = mat;
        this.band = band;
    }

    /** The set-point nearest to the mat's usual one that suits the seed and, where there is one, the thermostat. */
    public double usual() {
        return shared().orElse(band).nearestTo(mat.usualC());
    }

    /**
     * The set-points that suit seed and thermostat, the nearest to one that is wanted first: that one itself where it suits, and of
     * the others each whole degree.
     */
    public List<Double> fitting(double wanted) {
        Optional<Band> shared = shared();
        return shared.isEmpty()
                ? List.of()
                : IntStream.rangeClosed(shared.get().lowC(), shared.get().highC())
                        .mapToDouble(degree -> degree == WholeDegree.of(wanted) ? wanted : degree)
                        .boxed()
                        .sorted(Comparator.comparingDouble(celsius -> Math.abs(celsius - wanted)))
                        .toList();
    }

    /** Whether the thermostat can hold something that suits the seed. */
    boolean isPossible() {
        return shared().isPresent();
    }

    private Optional<Band> shared() {
        int low = Math.max(band.lowC(), mat.thermostat().lowest());
        int high = Math.min(band.highC(), mat.thermostat().highest());
        return low > high ? Optional.empty() : Optional.of(new Band(low, high));
    }

    /** The set-points of given days. */
    public WarmDays over(LocalDate from, LocalDate to, double asked) {
        return new WarmDays(
                from,
                Stream.iterate(from, day -> day.isBefore(to), day -> day.plusDays(1))
                        .map(day -> on(day, asked))
                        .toList());
    }

    /**
     * The set-points from a day on until it is done. Each day counts as the share of the whole that it is at its own
     * set-point, which is how degree days are added up.
     *
     * @param daysAt days it must lie there by set-point
     */
    public WarmDays from(LocalDate from, double asked, DoubleToIntFunction daysAt) {
        List<Double> celsius = new ArrayList<>();
        double done = 0;
        while (done < DONE) {
            double degree = on(from.plusDays(celsius.size()), asked);
            celsius.add(degree);
            done += 1.0 / Math.max(1, daysAt.applyAsInt(band.nearestTo(degree)));
        }
        return new WarmDays(from, celsius);
    }

    private double on(LocalDate day, double asked) {
        var bound = board.setPoint(mat.id(), day);
        if (bound.isPresent()) {
            return bound.getAsDouble();
        }
        var ready = board.readyAt(mat.id(), day);
        return ready.isPresent()
                        && band.contains(ready.getAsDouble())
                        && mat.thermostat().contains(ready.getAsDouble())
                ? ready.getAsDouble()
                : asked;
    }
}
