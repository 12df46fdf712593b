package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import warmshelf.allocation.Band;
import warmshelf.plan.engine.Request;

/**
 * One way a request can lie on a mat: so many days, at any of the set-points that ask for just that many.
 *
 * @param degrees the set-points, bit 20 for 20 °C and so on
 */
record StayOption(int days, long degrees) {

    /** All ways of a request, the shortest first. */
    static List<StayOption> of(Request request) {
        Map<Integer, Long> degreesByDays = new TreeMap<>();
        Band band = request.band();
        for (int celsius = band.lowC(); celsius <= band.highC(); celsius++) {
            long bit = 1L << celsius;
            request.daysAt(celsius).ifPresent(days -> degreesByDays.merge(days, bit, (a, b) -> a | b));
        }
        List<StayOption> ways = new ArrayList<>();
        degreesByDays.forEach((days, degrees) -> ways.add(new StayOption(days, degrees)));
        return ways;
    }

    /** The set-points of a band. */
    static long degrees(Band band) {
        return ((1L << (band.highC() - band.lowC() + 1)) - 1) << band.lowC();
    }
}
