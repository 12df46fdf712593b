package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.solver.IntegerProgram;
import warmshelf.plan.engine.solver.IntegerProgram.Sum;

/**
 * How many requests can be placed, as an integer program that asks a little less than the rules do, so that its bound holds for
 * every plan. Mats of one kind (thermostat, places, watts, circuit, light) are counted, not named: on each day so many of them are
 * set to each degree. Stays that need a degree between {@code a} and {@code b} share the mats set to one of those. What is let
 * off: that a stay keeps to one mat, and where in a place it lies.
 */
final class RoomProgram {
    private final IndexedQuestion ground;
    private final Layout empty;
    private final Layout known;
    private final boolean[] possible;
    private final IntegerProgram program = new IntegerProgram();
    private final List<Stay> stays = new ArrayList<>();
    private final Map<String, List<Integer>> kinds = new LinkedHashMap<>();

    /** A number of the program that is 1 when the request takes this way from this day on mats of a kind. */
    record Stay(int number, int ask, StayOption way, int from) {}

    RoomProgram(Layout known, boolean[] possible) {
        ground = known.ground;
        this.known = known;
        this.possible = possible;
        empty = new Layout(ground);
        for (int mat = 0; mat < ground.mats; mat++) {
            kinds.computeIfAbsent(kind(mat), none -> new ArrayList<>()).add(mat);
        }
    }

    IntegerProgram build() {
        Map<IndexedRequest, Sum> once = new LinkedHashMap<>();
        List<List<Sum>> warmed = new ArrayList<>();
        kinds.values().forEach(mats -> warmed.add(new KindRows(mats, once).add()));
        once.forEach((ask, sum) -> {
            // the number that counts for the aim; one for each request keeps the solver's first bound near
            int placed = program.number(1, 1, known.spot(ask.index()) == null ? 0 : 1);
            program.exactly(0, sum.add(placed, -1));
        });
        circuits(warmed);
        return program;
    }

    List<Stay> stays() {
        return stays;
    }

    private String kind(int mat) {
        long held = 0;
        for (long degrees : ground.thermostat[mat]) {
            held |= degrees;
        }
        return "%d|%d|%d|%d|%s"
                .formatted(held, ground.places[mat], ground.watts[mat], ground.circuit[mat], ground.dark[mat]);
    }

    private void circuits(List<List<Sum>> warmed) {
        for (int day = 0; day < ground.days; day++) {
            for (int circuit = 0; circuit < ground.continuousWatts.length; circuit++) {
                Sum load = new Sum();
                int kind = 0;
                for (List<Integer> mats : kinds.values()) {
                    if (ground.circuit[mats.get(0)] == circuit) {
                        load.addAll(warmed.get(kind).get(day), ground.watts[mats.get(0)]);
                    }
                    kind++;
                }
                program.atMost(ground.continuousWatts[circuit], load);
            }
        }
    }

    /** The rows of one kind of mats. */
    private final class KindRows {
        private final List<Integer> mats;
        private final Map<IndexedRequest, Sum> once;
        private final List<Map<Long, Sum>> useByDay = new ArrayList<>();

        KindRows(List<Integer> mats, Map<IndexedRequest, Sum> once) {
            this.mats = mats;
            this.once = once;
            for (int day = 0; day < ground.days; day++) {
                useByDay.add(new LinkedHashMap<>());
            }
        }

        /** By day, the sum that counts the mats that are warmed. */
        List<Sum> add() {
            for (IndexedRequest ask : ground.asks) {
                if (possible[ask.index()] && ground.sees(ask, mats.get(0))) {
                    stays(ask);
                }
            }
            List<Sum> warmed = new ArrayList<>();
            for (int day = 0; day < ground.days; day++) {
                warmed.add(rows(day));
            }
            return warmed;
        }

        private void stays(IndexedRequest ask) {
            TrialPlacement at = known.spot(ask.index());
            for (StayOption way : ask.ways()) {
                int last = Math.min(ask.latest(), ground.days - way.days());
                for (int from = ask.earliest(); from <= last; from++) {
                    if (someMatBears(way, from)) {
                        boolean hint = at != null
                                && mats.contains(at.mat())
                                && at.from() == from
                                && at.warm() == way.degrees();
                        int number = program.number(1, 0, hint ? 1 : 0);
                        stays.add(new Stay(number, ask.index(), way, from));
                        once.computeIfAbsent(ask, none -> new Sum()).add(number, 1);
                        for (int day = from; day < from + way.days(); day++) {
                            useByDay.get(day)
                                    .computeIfAbsent(way.degrees(), none -> new Sum())
                                    .add(number, ask.quarters());
                        }
                    }
                }
            }
        }

        private boolean someMatBears(StayOption way, int from) {
            for (int mat : mats) {
                boolean bears = true;
                for (int day = from; bears && day < from + way.days(); day++) {
                    bears = empty.bears(mat, day, way.degrees());
                }
                if (bears) {
                    return true;
                }
            }
            return false;
        }

        private Sum rows(int day) {
            long held = 0;
            int serving = 0;
            for (int mat : mats) {
                held |= ground.thermostat[mat][day];
                serving += ground.thermostat[mat][day] == 0 ? 0 : 1;
            }
            Sum warmed = new Sum();
            Map<Integer, Integer> setTo = new LinkedHashMap<>();
            for (int celsius = 0; celsius < Long.SIZE; celsius++) {
                if ((held >> celsius & 1) == 1) {
                    int number = program.number(serving, 0, knownSetTo(day, celsius));
                    setTo.put(celsius, number);
                    warmed.add(number, 1);
                }
            }
            program.atMost(serving, warmed);
            share(day, setTo);
            return warmed;
        }

        /** For each stretch of degrees: what needs one of them has room only on mats set to one of them. */
        private void share(int day, Map<Integer, Integer> setTo) {
            Map<Long, Sum> use = useByDay.get(day);
            Map<Long, Integer> quarters = new LinkedHashMap<>();
            TreeSet<Integer> lows = new TreeSet<>();
            TreeSet<Integer> highs = new TreeSet<>();
            int perMat = 4 * ground.places[mats.get(0)];
            use.forEach((degrees, sum) -> {
                int number = program.number(perMat * mats.size(), 0, knownUse(day, degrees));
                quarters.put(degrees, number);
                program.exactly(0, sum.add(number, -1));
            });
            for (long degrees : use.keySet()) {
                long reachable = degrees & mask(setTo);
                lows.add(Long.numberOfTrailingZeros(reachable));
                highs.add(Long.SIZE - 1 - Long.numberOfLeadingZeros(reachable));
            }
            for (int low : lows) {
                for (int high : highs.tailSet(low)) {
                    stretch(day, low, high, quarters, setTo, perMat);
                }
            }
        }

        private void stretch(
                int day, int low, int high, Map<Long, Integer> quarters, Map<Integer, Integer> setTo, int perMat) {
            long within = (-1L << low) & (-1L >>> (Long.SIZE - 1 - high));
            Sum sum = new Sum();
            boolean some = false;
            for (Map.Entry<Long, Integer> type : quarters.entrySet()) {
                if ((type.getKey() & mask(setTo) & ~within) == 0) {
                    sum.add(type.getValue(), 1);
                    some = true;
                }
            }
            if (some) {
                setTo.forEach((celsius, number) -> {
                    if (celsius >= low && celsius <= high) {
                        sum.add(number, -perMat);
                    }
                });
                program.atMost(-fixedQuarters(day, within & mask(setTo)), sum);
            }
        }

        private long mask(Map<Integer, Integer> setTo) {
            long mask = 0;
            for (int celsius : setTo.keySet()) {
                mask |= 1L << celsius;
            }
            return mask;
        }

        /** Quarters of fixed stays on mats that can only be set within the stretch on that day. */
        private int fixedQuarters(int day, long within) {
            int quarters = 0;
            for (int mat : mats) {
                if (empty.isWarm(mat, day) && (empty.common(mat, day) & ~within) == 0) {
                    for (int place = 0; place < ground.places[mat]; place++) {
                        quarters += Integer.bitCount(empty.occupancy.busy(mat, place, day, day + 1));
                    }
                }
            }
            return quarters;
        }

        private int knownSetTo(int day, int celsius) {
            int count = 0;
            for (int mat : mats) {
                boolean set = known.isWarm(mat, day) && Long.numberOfTrailingZeros(known.common(mat, day)) == celsius;
                count += set ? 1 : 0;
            }
            return count;
        }

        private int knownUse(int day, long degrees) {
            int quarters = 0;
            for (int mat : mats) {
                for (int i = 0; i < known.onMat(mat).size(); i++) {
                    @Nullable TrialPlacement spot = known.spot(known.onMat(mat).get(i));
                    if (spot != null && spot.warm() == degrees && spot.from() <= day && day < spot.to()) {
                        quarters += Integer.bitCount(spot.mask());
                    }
                }
            }
            return quarters;
        }
    }
}
