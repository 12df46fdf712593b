package warmshelf.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;

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
    public int usual() {
        int low = Math.max(band.lowC(), mat.thermostat().lowC());
        int high = Math.min(band.highC(), mat.thermostat().highC());
        return low > high ? band.nearestTo(mat.usualC()) : new Band(low, high).nearestTo(mat.usualC());
    }

    /** The set-points of given days. */
    public WarmDays over(LocalDate from, LocalDate to, int asked) {
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
    public WarmDays from(LocalDate from, int asked, IntUnaryOperator daysAt) {
        List<Integer> celsius = new ArrayList<>();
        double done = 0;
        while (done < DONE) {
            int degree = on(from.plusDays(celsius.size()), asked);
            celsius.add(degree);
            done += 1.0 / Math.max(1, daysAt.applyAsInt(band.nearestTo(degree)));
        }
        return new WarmDays(from, celsius);
    }

    private int on(LocalDate day, int asked) {
        var bound = board.setPoint(mat.id(), day);
        if (bound.isPresent()) {
            return bound.getAsInt();
        }
        var ready = board.readyAt(mat.id(), day);
        return ready.isPresent()
                        && band.contains(ready.getAsInt())
                        && mat.thermostat().contains(ready.getAsInt())
                ? ready.getAsInt()
                : asked;
    }
}
