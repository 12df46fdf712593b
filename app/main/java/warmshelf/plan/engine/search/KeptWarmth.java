package warmshelf.plan.engine.search;

import java.util.Arrays;

/** One set-point for each mat and day, as a plan has it; on days on which a mat is off, that of the days before or after. */
final class KeptWarmth {
    private KeptWarmth() {}

    /** By day, a single degree as a bit. */
    static long[] of(Layout plan, int mat) {
        int days = plan.ground.days;
        long[] kept = new long[days];
        int day = 0;
        while (day < days) {
            int end = day;
            long shared = thermostat(plan.ground, mat);
            while (end < days && (shared & common(plan, mat, end)) != 0) {
                shared &= common(plan, mat, end);
                end++;
            }
            if (end == day) {
                // out of service: nothing can lie there, whatever the set-point
                end++;
            }
            Arrays.fill(kept, day, end, best(plan.ground, shared));
            day = end;
        }
        return kept;
    }

    private static long common(Layout plan, int mat, int day) {
        return plan.isWarm(mat, day) ? plan.common(mat, day) : -1;
    }

    private static long thermostat(IndexedQuestion ground, int mat) {
        long held = 0;
        for (long degrees : ground.thermostat[mat]) {
            held |= degrees;
        }
        return held;
    }

    /** Of some degrees the one at which the requests lie for the shortest time, those that it does not suit counted as long. */
    private static long best(IndexedQuestion ground, long degrees) {
        long best = Long.lowestOneBit(degrees);
        double most = -1;
        for (long rest = degrees; rest != 0; rest &= rest - 1) {
            long degree = Long.lowestOneBit(rest);
            double speed = 0;
            for (IndexedRequest ask : ground.asks) {
                for (StayOption way : ask.ways()) {
                    speed += (way.degrees() & degree) == 0 ? 0 : 1.0 / way.days();
                }
            }
            if (speed > most) {
                most = speed;
                best = degree;
            }
        }
        return best;
    }
}
